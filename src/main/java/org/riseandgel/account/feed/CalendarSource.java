package org.riseandgel.account.feed;

import java.util.List;
import java.util.UUID;
import org.riseandgel.platform.calendar.CalendarEvent;

/** A feature that has dates for people's calendars; whoever implements this is asked for every feed. */
public interface CalendarSource {
    /** The dates that concern this person. */
    List<CalendarEvent> eventsFor(UUID person);
}
