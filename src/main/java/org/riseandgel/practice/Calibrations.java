package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;
import org.riseandgel.platform.sql.Sql;

/** How well people know what they know, summed up from the standings of their exercises; the answers are not counted. */
@ApplicationScoped
public class Calibrations {
    private final Sql sql;

    Calibrations(Sql sql) {
        this.sql = sql;
    }

    /** The calibration of a person over all exercises. */
    public Calibration of(UUID person) {
        return sql.first(
                        """
                        SELECT coalesce(sum(guess), 0)::int AS guess, coalesce(sum(guess_right), 0)::int AS guess_right,
                               coalesce(sum(fairly), 0)::int AS fairly, coalesce(sum(fairly_right), 0)::int AS fairly_right,
                               coalesce(sum(sure), 0)::int AS sure, coalesce(sum(sure_right), 0)::int AS sure_right
                        FROM exercise_standing WHERE person_id = ?""",
                        row -> Calibration.of(DrawRows.tally(row)),
                        person)
                .orElseThrow();
    }
}
