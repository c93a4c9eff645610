package org.riseandgel.platform.time;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.riseandgel.platform.school.SchoolSettings;

/** Moments as pages show them: in the school's zone, the month as a word. */
@ApplicationScoped
public class SchoolTime {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter DATE_AND_TIME =
            DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.ENGLISH);

    private final SchoolSettings school;

    SchoolTime(SchoolSettings school) {
        this.school = school;
    }

    /** The day, such as 3 May 2027. */
    public String date(Instant moment) {
        return DATE.format(moment.atZone(school.zone()));
    }

    /** A day of the school's calendar, such as 3 May 2027. */
    public String date(LocalDate day) {
        return DATE.format(day);
    }

    /** The day and the time of day, such as 3 May 2027, 14:05. */
    public String dateAndTime(Instant moment) {
        return DATE_AND_TIME.format(moment.atZone(school.zone()));
    }
}
