package org.riseandgel.grading;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.time.zone.ZoneOffsetTransition;
import java.util.List;
import java.util.Optional;

/**
 * From a day and a time of day in the school's zone to the moment that is meant.
 *
 * <p>When clocks are put forward, an hour of that day does not exist: a time in it is refused, and the next time that
 * exists is offered. When clocks are put back, an hour comes twice: a set opens at the first of the two moments and
 * closes at the second, so that nobody loses time by it.
 */
final class SchoolMoments {
    /** What is said of a day that cannot be taken. */
    static final String DAY_WANTED =
            "Write the day as year-month-day, such as 2027-03-28, with a year from 2000 to 2199.";

    private static final int FIRST_YEAR = 2000;
    private static final int LAST_YEAR = 2199;
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("H:mm").withResolverStyle(ResolverStyle.STRICT);
    private static final DateTimeFormatter TIME_SHOWN = DateTimeFormatter.ofPattern("HH:mm");

    private SchoolMoments() {}

    /** A day such as 2027-03-28, in a year that somebody can mean. */
    static Optional<LocalDate> day(String typed) {
        try {
            return Optional.of(LocalDate.parse(typed.strip()))
                    .filter(day -> day.getYear() >= FIRST_YEAR && day.getYear() <= LAST_YEAR);
        } catch (DateTimeParseException notADay) {
            return Optional.empty();
        }
    }

    /** A time of day such as 18:30. */
    static Optional<LocalTime> time(String typed) {
        try {
            return Optional.of(LocalTime.parse(typed.strip(), TIME));
        } catch (DateTimeParseException notATime) {
            return Optional.empty();
        }
    }

    static String shown(LocalTime time) {
        return TIME_SHOWN.format(time);
    }

    /** What is wrong with a time that the school's clocks never show; empty when they do. */
    static Optional<String> problem(LocalDateTime local, ZoneId zone) {
        if (!zone.getRules().getValidOffsets(local).isEmpty()) {
            return Optional.empty();
        }
        ZoneOffsetTransition gap = zone.getRules().getTransition(local);
        return Optional.of("The clocks are put forward on %s, from %s to %s, so %s does not exist. Write %s or later."
                .formatted(
                        local.toLocalDate(),
                        shown(gap.getDateTimeBefore().toLocalTime()),
                        shown(gap.getDateTimeAfter().toLocalTime()),
                        shown(local.toLocalTime()),
                        shown(gap.getDateTimeAfter().toLocalTime())));
    }

    /** The moment of an opening: the first, if the time comes twice. */
    static Instant opening(LocalDateTime local, ZoneId zone) {
        return local.atZone(zone).withEarlierOffsetAtOverlap().toInstant();
    }

    /** The moment of a closing: the last, if the time comes twice. */
    static Instant closing(LocalDateTime local, ZoneId zone) {
        return local.atZone(zone).withLaterOffsetAtOverlap().toInstant();
    }

    /** Whether the clocks show this time twice. */
    static boolean comesTwice(LocalDateTime local, ZoneId zone) {
        return zone.getRules().getValidOffsets(local).size() > 1;
    }

    /** What has to be said of times that come twice; empty when none does. */
    static List<String> remarks(LocalDateTime opens, LocalDateTime closes, ZoneId zone) {
        Optional<String> atOpening = Optional.ofNullable(opens)
                .filter(local -> comesTwice(local, zone))
                .map(local -> "The clocks are put back that night and show " + shown(local.toLocalTime())
                        + " twice. The set opens at the first.");
        Optional<String> atClosing = Optional.ofNullable(closes)
                .filter(local -> comesTwice(local, zone))
                .map(local -> "The clocks are put back that night and show " + shown(local.toLocalTime())
                        + " twice. The set closes at the second.");
        return List.of(atOpening, atClosing).stream().flatMap(Optional::stream).toList();
    }
}
