package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.clearance.rule.Body;
import org.riseandgel.clearance.rule.ClearanceRule;
import org.riseandgel.clearance.rule.Standing;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.platform.sql.Sql;

/**
 * What the rule answers from some instant on if nothing more happens, kept so that a question at the door is one indexed
 * read. Worked out from the lines and never read where something is decided. When a line is added, the answers that may
 * depend on it go, in the same transaction; the next question works them out again.
 */
@ApplicationScoped
class Answers {
    /** One row by its key, if the clock is not behind the newest line, which is one entry at the end of an index. */
    static final String FIND =
            """
            SELECT pieces FROM register_answer
            WHERE person_id = ? AND place_id = ? AND task = ?
              AND ? >= (SELECT recorded FROM register_event ORDER BY number DESC LIMIT 1)""";

    private final Sql sql;

    Answers(Sql sql) {
        this.sql = sql;
    }

    /** What is kept for one question, in the order of time. */
    record Kept(UUID person, UUID place, String task, String pieces) {
        /** The answer at an instant; empty before the first of them. */
        Optional<Standing> at(Instant when) {
            return KeptPieces.at(pieces, when);
        }
    }

    /** What is kept, unless the clock is behind the newest line: then nothing that was worked out before counts. */
    Optional<Kept> find(UUID person, UUID place, Task task, Instant now) {
        return sql.first(
                FIND, row -> new Kept(person, place, task.name(), row.text("pieces")), person, place, task.name(), now);
    }

    /** Keeps an answer. To be called while no line can be added. */
    void keep(UUID person, UUID place, Task task, List<ClearanceRule.Piece> pieces, Collection<UUID> dependsOn) {
        sql.change(
                """
                INSERT INTO register_answer (person_id, place_id, task, pieces, depends_on)
                VALUES (?, ?, ?, ?, ?::uuid[])
                ON CONFLICT (person_id, place_id, task)
                DO UPDATE SET pieces = EXCLUDED.pieces, depends_on = EXCLUDED.depends_on""",
                person,
                place,
                task.name(),
                KeptPieces.write(pieces),
                dependsOn.stream().map(UUID::toString).toArray(String[]::new));
    }

    /** Throws away what may be another answer after a line. */
    void forget(Body said) {
        Optional<UUID> subject = said.subject();
        if (subject.isEmpty()) {
            sql.change("DELETE FROM register_answer");
        } else {
            sql.change(
                    "DELETE FROM register_answer WHERE person_id = ? OR depends_on @> ?::uuid[]",
                    subject.get(),
                    new String[] {subject.get().toString()});
        }
    }

    /** Everything that is kept, to be compared with the lines. */
    List<Kept> all() {
        return sql.list(
                "SELECT person_id, place_id, task, pieces FROM register_answer ORDER BY person_id, place_id, task",
                row -> new Kept(row.uuid("person_id"), row.uuid("place_id"), row.text("task"), row.text("pieces")));
    }
}
