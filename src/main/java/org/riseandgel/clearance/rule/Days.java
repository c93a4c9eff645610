package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;

/** Days as the school's clock has them. A day may have 23 or 25 hours. */
public record Days(ZoneId zone) {
    /** The day on which something happens. */
    public LocalDate of(Instant moment) {
        return LocalDate.ofInstant(moment, zone);
    }

    /** The first instant of a day. */
    public Instant start(LocalDate day) {
        return day.atStartOfDay(zone).toInstant();
    }

    /** The first instant after a day: what holds through that day fails from here. */
    public Instant after(LocalDate day) {
        return start(day.plusDays(1));
    }

    /** Whole days between two days of the calendar. */
    long between(Instant earlier, Instant later) {
        return ChronoUnit.DAYS.between(of(earlier), of(later));
    }

    /** The first instant after the same day so many months later. */
    Instant afterMonths(Instant moment, int months) {
        return after(of(moment).plusMonths(months));
    }
}
