package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.platform.sql.Row;
import org.riseandgel.platform.sql.Sql;

/**
 * Jobs that judge again. By SQL: one index lets one job run for each set, and each answer of a job is taken by whichever
 * node locks its row first, so a job goes on after a restart and on any node.
 */
@ApplicationScoped
class RegradeStore {
    private static final String JOBS =
            """
            SELECT j.id, j.set_id, j.exercise_id, j.version, j.state, j.reason, j.started_by, j.started_at,
                   j.finished_at, j.undone_at,
                   (SELECT count(*) FROM graded_regrade_answer a WHERE a.regrade_id = j.id) AS answers,
                   (SELECT count(*) FROM graded_regrade_answer a
                    WHERE a.regrade_id = j.id AND a.outcome = 'WAITING') AS waiting,
                   (SELECT count(*) FROM graded_regrade_answer a
                    WHERE a.regrade_id = j.id AND a.outcome IN ('CHANGED', 'UNDONE', 'KEPT')) AS changed,
                   (SELECT count(*) FROM graded_regrade_answer a
                    WHERE a.regrade_id = j.id AND a.outcome = 'CHANGED') AS to_undo,
                   (SELECT count(*) FROM graded_regrade_answer a
                    WHERE a.regrade_id = j.id AND a.outcome IN ('CORRECTED_BY_HAND', 'OTHER_NUMBERS')) AS left_alone
            FROM graded_regrade j
            """;

    private final Sql sql;

    RegradeStore(Sql sql) {
        this.sql = sql;
    }

    /** How far a job is. */
    enum State {
        RUNNING,
        DONE,
        UNDOING,
        UNDONE
    }

    /** What became of an answer. */
    enum Outcome {
        WAITING,
        SAME,
        CHANGED,
        CORRECTED_BY_HAND,
        OTHER_NUMBERS,
        UNDONE,
        KEPT
    }

    /** A job with its counts. */
    record Job(
            UUID id,
            UUID set,
            String exercise,
            String version,
            State state,
            String reason,
            UUID startedBy,
            Instant startedAt,
            Instant finishedAt,
            Instant undoneAt,
            int answers,
            int waiting,
            int changed,
            int toUndo,
            int leftAlone) {
        public boolean isAtWork() {
            return state == State.RUNNING || state == State.UNDOING;
        }

        public boolean isUndone() {
            return state == State.UNDONE;
        }

        /** How far it is, in words. */
        public String stateWords() {
            return switch (state) {
                case RUNNING -> "Judging again";
                case DONE -> "Done";
                case UNDOING -> "Undoing";
                case UNDONE -> "Undone";
            };
        }

        public boolean isUndoable() {
            return state == State.DONE && changed > 0;
        }

        /** How many of the answers have been dealt with. */
        public int done() {
            return state == State.UNDOING ? answers - toUndo : answers - waiting;
        }
    }

    /** An answer that a job deals with. */
    record Target(UUID work, int number, int part) {}

    Optional<Job> find(UUID job) {
        return sql.first(JOBS + "WHERE j.id = ?", RegradeStore::job, job);
    }

    List<Job> ofSet(UUID set) {
        return sql.list(JOBS + "WHERE j.set_id = ? ORDER BY j.started_at DESC, j.id", RegradeStore::job, set);
    }

    List<Job> atWork() {
        return sql.list(JOBS + "WHERE j.state IN ('RUNNING', 'UNDOING')", RegradeStore::job);
    }

    /** Adds a job with all answers to the exercise; false, and nothing added, while another job of the set runs. */
    boolean add(Job job) {
        boolean added = sql.any(
                """
                INSERT INTO graded_regrade (id, set_id, exercise_id, version, state, reason, started_by, started_at)
                VALUES (?, ?, ?, ?, 'RUNNING', ?, ?, ?)
                ON CONFLICT DO NOTHING RETURNING id""",
                job.id(),
                job.set(),
                job.exercise(),
                job.version(),
                job.reason(),
                job.startedBy(),
                job.startedAt());
        if (added) {
            sql.change(
                    """
                    INSERT INTO graded_regrade_answer (regrade_id, work_id, number, part)
                    SELECT ?, a.work_id, a.number, a.part
                    FROM graded_answer a
                    JOIN graded_item i ON i.work_id = a.work_id AND i.number = a.number
                    JOIN graded_work w ON w.id = a.work_id
                    WHERE w.set_id = ? AND i.exercise_id = ?""",
                    job.id(),
                    job.set(),
                    job.exercise());
        }
        return added;
    }

    /** Takes some answers in this state that no other node has taken, until the caller's transaction ends. */
    List<Target> take(UUID job, Outcome outcome, int most) {
        return sql.list(
                """
                SELECT work_id, number, part FROM graded_regrade_answer
                WHERE regrade_id = ? AND outcome = ? ORDER BY work_id, number, part
                LIMIT ? FOR UPDATE SKIP LOCKED""",
                row -> new Target(row.uuid("work_id"), row.number("number"), row.number("part")),
                job,
                outcome.name(),
                most);
    }

    void settle(UUID job, Target target, Outcome outcome) {
        sql.change(
                """
                UPDATE graded_regrade_answer SET outcome = ?
                WHERE regrade_id = ? AND work_id = ? AND number = ? AND part = ?""",
                outcome.name(),
                job,
                target.work(),
                target.number(),
                target.part());
    }

    /** Ends a job that has nothing left to do; does nothing while another node still holds some of it. */
    void finish(UUID job, Instant now) {
        sql.change(
                """
                UPDATE graded_regrade j SET state = 'DONE', finished_at = ?
                WHERE j.id = ? AND j.state = 'RUNNING' AND NOT EXISTS (
                    SELECT 1 FROM graded_regrade_answer a WHERE a.regrade_id = j.id AND a.outcome = 'WAITING')""",
                now,
                job);
        sql.change(
                """
                UPDATE graded_regrade j SET state = 'UNDONE', undone_at = ?
                WHERE j.id = ? AND j.state = 'UNDOING' AND NOT EXISTS (
                    SELECT 1 FROM graded_regrade_answer a WHERE a.regrade_id = j.id AND a.outcome = 'CHANGED')""",
                now,
                job);
    }

    /** Begins to undo a job that is done; false when it is not, or while another job of the set runs. */
    boolean beginUndo(Job job, UUID by) {
        return sql.change(
                        """
                        UPDATE graded_regrade SET state = 'UNDOING', undone_by = ?
                        WHERE id = ? AND state = 'DONE' AND NOT EXISTS (
                            SELECT 1 FROM graded_regrade o WHERE o.set_id = ? AND o.state IN ('RUNNING', 'UNDOING'))""",
                        by,
                        job.id(),
                        job.set())
                == 1;
    }

    /** Who began to undo a job. */
    Optional<UUID> undoneBy(UUID job) {
        return sql.first("SELECT undone_by FROM graded_regrade WHERE id = ?", row -> row.uuid("undone_by"), job);
    }

    private static Job job(Row row) throws SQLException {
        return new Job(
                row.uuid("id"),
                row.uuid("set_id"),
                row.text("exercise_id"),
                row.text("version"),
                State.valueOf(row.text("state")),
                row.text("reason"),
                row.uuid("started_by"),
                row.instant("started_at"),
                row.instant("finished_at"),
                row.instant("undone_at"),
                row.number("answers"),
                row.number("waiting"),
                row.number("changed"),
                row.number("to_undo"),
                row.number("left_alone"));
    }
}
