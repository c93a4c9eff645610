package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.riseandgel.platform.school.SchoolSettings;

/** The moment and the day that it is at the school; practice counts in days of the school's zone. */
@ApplicationScoped
class SchoolDay {
    private final SchoolSettings school;
    private final Clock clock;

    SchoolDay(SchoolSettings school, Clock clock) {
        this.school = school;
        this.clock = clock;
    }

    /** Now, as finely as the database keeps it. */
    Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }

    LocalDate today() {
        return of(clock.instant());
    }

    LocalDate of(Instant moment) {
        return LocalDate.ofInstant(moment, school.zone());
    }
}
