package org.riseandgel.platform.calendar;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Something that has a date.
 *
 * @param uid the same for the same thing at every reading, without spaces, unique in the school
 * @param day the day of it, where the time of day does not matter
 * @param at the moment of it, where it does
 * @param reminder how long before it a calendar program should remind; empty for no reminder
 */
public record CalendarEvent(
        String uid,
        Optional<LocalDate> day,
        Optional<Instant> at,
        String title,
        String text,
        Optional<Duration> reminder) {
    public CalendarEvent {
        if (day.isPresent() == at.isPresent()) {
            throw new IllegalArgumentException("an event has either a day or a moment: " + uid);
        }
    }

    /** On a day. */
    public static CalendarEvent on(LocalDate day, String uid, String title, String text) {
        return new CalendarEvent(uid, Optional.of(day), Optional.empty(), title, text, Optional.empty());
    }

    /** At a moment. */
    public static CalendarEvent at(Instant at, String uid, String title, String text) {
        return new CalendarEvent(uid, Optional.empty(), Optional.of(at), title, text, Optional.empty());
    }

    /** The same with a reminder. */
    public CalendarEvent remindedBefore(Duration before) {
        return new CalendarEvent(uid, day, at, title, text, Optional.of(before));
    }
}
