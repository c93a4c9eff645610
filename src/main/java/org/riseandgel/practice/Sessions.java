package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.platform.sql.Row;
import org.riseandgel.platform.sql.Sql;

/** Sessions of mixed items in the database. */
@ApplicationScoped
class Sessions {
    private final Sql sql;

    Sessions(Sql sql) {
        this.sql = sql;
    }

    /**
     * A session.
     *
     * @param drawn how many of its items were drawn
     * @param done how many of those are over
     * @param open the draw that is open; null when none is
     */
    record Session(UUID id, int number, List<MixedPlan.Item> items, int drawn, int done, UUID open) {
        boolean isOver() {
            return done >= items.size();
        }
    }

    /** The latest session of that day. */
    Optional<Session> latest(UUID person, LocalDate day) {
        return sql.first(
                """
                SELECT s.id, s.number, s.items, count(d.id) AS drawn, count(d.finished_at) AS done,
                       (array_agg(d.id ORDER BY d.session_number) FILTER (WHERE d.id IS NOT NULL
                           AND d.finished_at IS NULL))[1] AS open
                FROM practice_session s LEFT JOIN draw d ON d.session_id = s.id
                WHERE s.person_id = ? AND s.day = ?
                GROUP BY s.id ORDER BY s.number DESC LIMIT 1""",
                row -> new Session(
                        row.uuid("id"),
                        row.number("number"),
                        row.texts("items").stream().map(Sessions::item).toList(),
                        row.number("drawn"),
                        row.number("done"),
                        row.uuid("open")),
                person,
                day);
    }

    /** Begins a session, unless another request has just begun one with that number. */
    void begin(UUID person, SchoolDay day, int number, long seed, List<MixedPlan.Item> items) {
        sql.change(
                """
                INSERT INTO practice_session (id, person_id, day, number, begun_at, seed, items)
                VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""",
                UUID.randomUUID(),
                person,
                day.today(),
                number,
                day.now(),
                seed,
                items.stream().map(Sessions::text).toArray(String[]::new));
    }

    /** What became of the items of the latest session of that day. */
    record Summary(int items, int done, List<Result> results) {
        /** How many items were right without help. */
        public long getRight() {
            return results.stream().filter(Result::right).count();
        }
    }

    /** One item: its exercise and skill, and whether all its answers were right without help. */
    record Result(int number, UUID draw, String exercise, String skill, boolean right) {}

    Optional<Summary> summary(UUID person, LocalDate day) {
        return latest(person, day).map(session -> new Summary(session.items.size(), session.done, results(session.id)));
    }

    private List<Result> results(UUID session) {
        return sql.list(
                """
                SELECT d.session_number, d.id, d.exercise_id, d.skill,
                       bool_and(a.verdict = 'RIGHT' AND a.hints = 0 AND NOT a.looked_up) AS all_right
                FROM draw d JOIN answer a ON a.draw_id = d.id
                WHERE d.session_id = ? AND d.finished_at IS NOT NULL
                GROUP BY d.id ORDER BY d.session_number""",
                Sessions::result,
                session);
    }

    private static Result result(Row row) throws java.sql.SQLException {
        return new Result(
                row.number("session_number"),
                row.uuid("id"),
                row.text("exercise_id"),
                row.text("skill"),
                row.flag("all_right"));
    }

    private static MixedPlan.Item item(String text) {
        String[] parts = text.split("/", 2);
        return new MixedPlan.Item(parts[0], parts.length == 1 ? null : parts[1]);
    }

    private static String text(MixedPlan.Item item) {
        return item.exercise() == null ? item.skill() : item.skill() + "/" + item.exercise();
    }
}
