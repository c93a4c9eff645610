package org.riseandgel.clearance.pages;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import org.riseandgel.platform.web.Problem;

/**
 * A moment of the past that somebody typed as a day and a time of the school's clock. In the hour that a clock is set back
 * the later of the two is meant, and in the hour that it leaps over the moment just behind it: what was known by then is
 * the fuller answer.
 */
record Moment(String typed, Optional<Instant> instant) {
    static Moment read(String field, String typed, ZoneId zone, Instant now, List<Problem> problems) {
        if (typed == null || typed.isBlank()) {
            return new Moment("", Optional.empty());
        }
        try {
            Instant read = ZonedDateTime.of(LocalDateTime.parse(typed.strip()), zone)
                    .withLaterOffsetAtOverlap()
                    .toInstant();
            if (read.isAfter(now)) {
                problems.add(
                        new Problem(field, "Give a moment that has passed; the register does not know what comes."));
                return new Moment(typed, Optional.empty());
            }
            return new Moment(typed, Optional.of(read));
        } catch (DateTimeParseException e) {
            problems.add(new Problem(field, "Write day and time like 2026-05-03T14:30."));
            return new Moment(typed, Optional.empty());
        }
    }
}
