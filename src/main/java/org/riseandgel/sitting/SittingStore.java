package org.riseandgel.sitting;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.exercise.ReadAnswer;
import org.riseandgel.platform.sql.Sql;

/**
 * Sittings in the database. By SQL, because what matters is in the statements: a save that holds the sitting open while
 * it writes, a hand-in that waits for such saves, and one row for each person, check and day.
 */
@ApplicationScoped
class SittingStore {
    private static final String LOAD =
            """
            SELECT s.id, s.person_id, s.check_id, s.title, s.pool_version, s.items, s.pass_right, s.pass_critical_wrong,
                   s.seed, s.day, s.started_at, s.handed_in_at, s.right_items, s.critical_wrong, s.passed,
                   s.content_hash, s.core_version,
                   i.number, i.exercise_id, i.version, i.skill, i.critical, i.seed AS item_seed, i.typed, i.read_value,
                   i.read_unit, i.read_figures, i.saves, i.saved_at, i.verdict, i.slip, i.expected
            FROM sitting s JOIN sitting_item i ON i.sitting_id = s.id
            """;

    /** Whoever holds the sitting's row keeps a hand-in waiting; after a hand-in no row is found and nothing is saved. */
    private static final String SAVE =
            """
            WITH still_open AS (
                SELECT id FROM sitting WHERE id = ? AND person_id = ? AND handed_in_at IS NULL FOR UPDATE),
            saved AS (
                UPDATE sitting_item i
                SET typed = ?, read_value = ?, read_unit = ?, read_figures = ?, saves = i.saves + 1, saved_at = ?
                FROM still_open
                WHERE i.sitting_id = still_open.id AND i.number = ?
                RETURNING i.sitting_id, i.number, i.saves, i.saved_at)
            INSERT INTO sitting_save (sitting_id, number, nth, saved_at)
            SELECT sitting_id, number, saves, saved_at FROM saved
            RETURNING nth""";

    private static final String ADD =
            """
            INSERT INTO sitting (id, person_id, check_id, title, pool_version, items, pass_right, pass_critical_wrong,
                seed, day, started_at)
            VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
            ON CONFLICT DO NOTHING
            RETURNING id""";

    private final Sql sql;

    SittingStore(Sql sql) {
        this.sql = sql;
    }

    /** The sitting of that person; empty when it is not theirs. */
    Optional<StoredSitting> load(UUID person, UUID sitting) {
        return SittingRows.fold(sql.list(
                        LOAD + "WHERE s.id = ? AND s.person_id = ? ORDER BY i.number",
                        SittingRows::sitting,
                        sitting,
                        person))
                .stream()
                .findFirst();
    }

    /** The sitting if it is still open, held until the caller's transaction ends. */
    Optional<StoredSitting> hold(UUID person, UUID sitting) {
        boolean open = sql.any(
                "SELECT 1 FROM sitting WHERE id = ? AND person_id = ? AND handed_in_at IS NULL FOR UPDATE",
                sitting,
                person);
        return open ? load(person, sitting) : Optional.empty();
    }

    /** All sittings of a person, the latest first. */
    List<StoredSitting> of(UUID person) {
        return SittingRows.fold(sql.list(
                LOAD + "WHERE s.person_id = ? ORDER BY s.started_at DESC, s.id, i.number",
                SittingRows::sitting,
                person));
    }

    /** All sittings of a person at one check, the latest first. */
    List<StoredSitting> of(UUID person, String check) {
        return SittingRows.fold(sql.list(
                LOAD + "WHERE s.person_id = ? AND s.check_id = ? ORDER BY s.started_at DESC, s.id, i.number",
                SittingRows::sitting,
                person,
                check));
    }

    /** The open sitting of a person at a check. */
    Optional<UUID> open(UUID person, String check) {
        return sql.first(
                "SELECT id FROM sitting WHERE person_id = ? AND check_id = ? AND handed_in_at IS NULL",
                row -> row.uuid("id"),
                person,
                check);
    }

    /** How often the person was asked each exercise in sittings of the check. */
    Map<String, Integer> asked(UUID person, String check) {
        Map<String, Integer> asked = new HashMap<>();
        sql.list(
                        """
                        SELECT i.exercise_id, count(*) AS times
                        FROM sitting_item i JOIN sitting s ON s.id = i.sitting_id
                        WHERE s.person_id = ? AND s.check_id = ?
                        GROUP BY i.exercise_id""",
                        row -> Map.entry(row.text("exercise_id"), row.number("times")),
                        person,
                        check)
                .forEach(entry -> asked.put(entry.getKey(), entry.getValue()));
        return asked;
    }

    /** When a sitting was begun, at which check, and whether it is open. */
    record Begun(String check, Instant at, boolean open) {}

    /** All beginnings of a person. */
    List<Begun> begun(UUID person) {
        return sql.list(
                "SELECT check_id, started_at, handed_in_at IS NULL AS open FROM sitting WHERE person_id = ?",
                row -> new Begun(row.text("check_id"), row.instant("started_at"), row.flag("open")),
                person);
    }

    /** The exercises of the person's open sittings. */
    Set<String> askedNow(UUID person) {
        return new HashSet<>(sql.list(
                "SELECT exercise_id FROM asked_in_check WHERE person_id = ?", row -> row.text("exercise_id"), person));
    }

    /** Adds the sitting's own row. False when there is an open one, or one of this day, and nothing is added. */
    boolean add(StoredSitting sitting) {
        return sql.any(
                ADD,
                sitting.id(),
                sitting.person(),
                sitting.check(),
                sitting.title(),
                sitting.pool(),
                sitting.items().size(),
                sitting.pass().right(),
                sitting.pass().criticalWrong(),
                sitting.seed(),
                sitting.day(),
                sitting.startedAt());
    }

    /** Adds an item with the text it is drawn from, in the transaction that added the sitting. */
    void add(UUID sitting, StoredItem item, String sourceText, Instant now) {
        sql.change(
                """
                INSERT INTO exercise_version (exercise_id, version, source_text, first_used)
                VALUES (?, ?, ?, ?)
                ON CONFLICT DO NOTHING""",
                item.exercise(),
                item.version(),
                sourceText,
                now);
        sql.change(
                """
                INSERT INTO sitting_item (sitting_id, number, exercise_id, version, skill, critical, seed)
                VALUES (?, ?, ?, ?, ?, ?, ?)""",
                sitting,
                item.number(),
                item.exercise(),
                item.version(),
                item.skill(),
                item.critical(),
                item.seed());
    }

    /** Saves an answer in place of the one before. False, and nothing saved, once the sitting is handed in. */
    boolean save(UUID person, UUID sitting, int number, ReadAnswer answer, Instant now) {
        return sql.any(
                SAVE, sitting, person, answer.typed(), answer.value(), answer.unit(), answer.figures(), now, number);
    }

    /** Stores verdicts and result of a sitting that the transaction holds. */
    void handIn(StoredSitting marked) {
        for (StoredItem item : marked.items()) {
            sql.change(
                    "UPDATE sitting_item SET verdict = ?, slip = ?, expected = ? WHERE sitting_id = ? AND number = ?",
                    item.verdict(),
                    item.slip(),
                    item.expected(),
                    marked.id(),
                    item.number());
        }
        StoredSitting.Result result = marked.result();
        sql.change(
                """
                UPDATE sitting SET handed_in_at = ?, right_items = ?, critical_wrong = ?, passed = ?, content_hash = ?,
                    core_version = ?
                WHERE id = ?""",
                result.handedInAt(),
                result.right(),
                result.criticalWrong(),
                result.passed(),
                result.contentHash(),
                result.coreVersion(),
                marked.id());
    }

    /** The text that a version was drawn from. */
    Optional<String> versionText(String exercise, String version) {
        return sql.first(
                "SELECT source_text FROM exercise_version WHERE exercise_id = ? AND version = ?",
                row -> row.text("source_text"),
                exercise,
                version);
    }
}
