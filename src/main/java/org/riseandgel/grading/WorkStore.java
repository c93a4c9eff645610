package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.exercise.Verdict;
import org.riseandgel.platform.sql.Row;
import org.riseandgel.platform.sql.Sql;

/**
 * Tries and their answers in the database. By SQL, because the statement that stores an answer says by itself whether it
 * may: the try is open, the set is out, and it has not closed for this person. Whoever comes at once waits for the try's
 * row.
 */
@ApplicationScoped
class WorkStore {
    private static final String ROWS =
            """
            SELECT w.id, w.set_id, w.person_id, w.nth, w.begun_at, w.handed_in_at,
                   i.number, i.exercise_id, i.seed, p.version, p.skill, l.ranges, l.weight,
                   a.part, a.typed, a.read_value, a.read_unit, a.read_figures, a.verdict, a.slip, a.expected, a.saves,
                   a.shown_at, a.answered_at, a.core_version
            FROM graded_work w
            JOIN graded_item i ON i.work_id = w.id
            JOIN graded_line l ON l.id = i.line_id
            JOIN graded_pool p ON p.line_id = i.line_id AND p.exercise_id = i.exercise_id
            LEFT JOIN graded_answer a ON a.work_id = i.work_id AND a.number = i.number
            """;
    private static final String IN_ORDER = " ORDER BY w.set_id, w.person_id, w.nth, i.number, a.part";

    private static final String CHANGES =
            """
            SELECT DISTINCT ON (c.work_id, c.number, c.part) c.id, c.work_id, c.number, c.part, c.kind, c.credit,
                   c.verdict, c.slip, c.expected, c.reason, c.changed_by, c.changed_at, c.regrade_id,
                   r.version AS mended, c.saves
            FROM graded_mark_change c JOIN graded_work w ON w.id = c.work_id
            LEFT JOIN graded_regrade r ON r.id = c.regrade_id AND c.kind = 'REGRADE'
            """;
    private static final String NEWEST = " ORDER BY c.work_id, c.number, c.part, c.id DESC";

    /** When a set closes for one person. The names of set and person are those of the statement around it. */
    private static final String CLOSES =
            """
            coalesce((SELECT e.closes_at FROM graded_extension e WHERE e.set_id = s.id AND e.person_id = w.person_id
                      ORDER BY e.given_at DESC, e.id LIMIT 1), s.closes_at)""";

    private static final String STORE =
            """
            WITH still_open AS (
                SELECT w.id FROM graded_work w JOIN graded_set s ON s.id = w.set_id
                WHERE w.id = ? AND w.person_id = ? AND w.handed_in_at IS NULL AND s.state = 'PUBLISHED'
                  AND ? < %s
                FOR UPDATE OF w FOR SHARE OF s)
            INSERT INTO graded_answer (work_id, number, part, typed, read_value, read_unit, read_figures, verdict, slip,
                expected, shown_at, answered_at, core_version)
            SELECT id, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ? FROM still_open
            ON CONFLICT (work_id, number, part) DO UPDATE SET
                typed = EXCLUDED.typed, read_value = EXCLUDED.read_value, read_unit = EXCLUDED.read_unit,
                read_figures = EXCLUDED.read_figures, verdict = EXCLUDED.verdict, slip = EXCLUDED.slip,
                expected = EXCLUDED.expected, shown_at = EXCLUDED.shown_at, answered_at = EXCLUDED.answered_at,
                core_version = EXCLUDED.core_version, saves = graded_answer.saves + 1
            WHERE ?
            RETURNING part"""
                    .formatted(CLOSES);

    private final Sql sql;

    WorkStore(Sql sql) {
        this.sql = sql;
    }

    Optional<Work> find(UUID work) {
        return fold(
                        sql.list(ROWS + "WHERE w.id = ?" + IN_ORDER, WorkStore::work, work),
                        sql.list(CHANGES + "WHERE w.id = ?" + NEWEST, WorkStore::change, work))
                .stream()
                .findFirst();
    }

    /** All tries at a set, person by person, the first try first. */
    List<Work> ofSet(UUID set) {
        return fold(
                sql.list(ROWS + "WHERE w.set_id = ?" + IN_ORDER, WorkStore::work, set),
                sql.list(CHANGES + "WHERE w.set_id = ?" + NEWEST, WorkStore::change, set));
    }

    /** All tries at all sets of a cohort, set by set and person by person, the first try first. */
    List<Work> ofCohort(UUID cohort) {
        String which = "WHERE w.set_id IN (SELECT id FROM graded_set WHERE cohort_id = ?)";
        return fold(
                sql.list(ROWS + which + IN_ORDER, WorkStore::work, cohort),
                sql.list(CHANGES + which + NEWEST, WorkStore::change, cohort));
    }

    /** All tries of a person, set by set, the first try first. */
    List<Work> ofPerson(UUID person) {
        return fold(
                sql.list(ROWS + "WHERE w.person_id = ?" + IN_ORDER, WorkStore::work, person),
                sql.list(CHANGES + "WHERE w.person_id = ?" + NEWEST, WorkStore::change, person));
    }

    /** All tries of a person at a set. */
    List<Work> of(UUID set, UUID person) {
        return ofPerson(person).stream().filter(work -> work.set().equals(set)).toList();
    }

    /** Adds a try without its items; false, and nothing added, when one is open or just as many are there. */
    boolean add(UUID id, UUID set, UUID person, int nth, long seed, Instant now) {
        return sql.any(
                """
                INSERT INTO graded_work (id, set_id, person_id, nth, seed, begun_at)
                SELECT ?, s.id, ?, ?, ?, ? FROM graded_set s
                WHERE s.id = ? AND s.state = 'PUBLISHED'
                ON CONFLICT DO NOTHING RETURNING id""",
                id,
                person,
                nth,
                seed,
                now,
                set);
    }

    void addItem(UUID work, int number, FormDraw.Chosen chosen, long seed) {
        sql.change(
                "INSERT INTO graded_item (work_id, number, line_id, exercise_id, seed) VALUES (?, ?, ?, ?, ?)",
                work,
                number,
                chosen.line().id(),
                chosen.exercise().exercise(),
                seed);
    }

    /**
     * Stores an answer, in place of an earlier one where that may be. False, and nothing stored, when the try was handed
     * in, the set was withdrawn or has closed, or the answer before stands.
     */
    boolean store(Work work, int number, ItemAnswer answer, boolean mayReplace) {
        return sql.any(
                STORE,
                work.id(),
                work.person(),
                answer.answeredAt(),
                number,
                answer.part(),
                answer.typed(),
                answer.readValue(),
                answer.readUnit(),
                answer.readFigures(),
                answer.verdict().name(),
                answer.slip(),
                answer.expected(),
                answer.shownAt(),
                answer.answeredAt(),
                answer.coreVersion(),
                mayReplace);
    }

    /** Hands a try in; false when it was handed in before, or the set was withdrawn or has closed. */
    boolean handIn(Work work, Instant now) {
        return sql.change(
                        """
                        UPDATE graded_work w SET handed_in_at = ? FROM graded_set s
                        WHERE w.id = ? AND s.id = w.set_id AND w.handed_in_at IS NULL AND s.state = 'PUBLISHED'
                          AND ? < %s"""
                                .formatted(CLOSES),
                        now,
                        work.id(),
                        now)
                == 1;
    }

    /** Ends the person's open try at a set without an act of theirs; false when there is none. */
    boolean endOpen(UUID set, UUID person, Instant at) {
        return sql.change(
                        """
                        UPDATE graded_work SET handed_in_at = greatest(begun_at, ?)
                        WHERE set_id = ? AND person_id = ? AND handed_in_at IS NULL""",
                        at,
                        set,
                        person)
                == 1;
    }

    /** Holds a try, so that its answers and marks stay as they are read until the caller's transaction ends. */
    void hold(UUID work) {
        sql.any("SELECT id FROM graded_work WHERE id = ? FOR NO KEY UPDATE", work);
    }

    /** Everything that was done to the mark of a part, newest first. */
    List<MarkChange> history(UUID work, int number, int part) {
        return sql.list(
                """
                SELECT id, work_id, number, part, kind, credit, verdict, slip, expected, reason, changed_by, changed_at,
                       regrade_id, NULL AS mended, saves
                FROM graded_mark_change WHERE work_id = ? AND number = ? AND part = ? ORDER BY id DESC""",
                WorkStore::change,
                work,
                number,
                part);
    }

    /** Adds a change of a mark; the id of the record is given by the database. */
    void change(MarkChange change) {
        sql.change(
                """
                INSERT INTO graded_mark_change (work_id, number, part, kind, credit, verdict, slip, expected, reason,
                    changed_by, changed_at, regrade_id, saves)
                VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                ON CONFLICT DO NOTHING""",
                change.work(),
                change.number(),
                change.part(),
                change.kind().name(),
                change.credit(),
                change.verdict(),
                change.slip(),
                change.expected(),
                change.reason(),
                change.by(),
                change.at(),
                change.regrade(),
                change.saves());
    }

    private static Work work(Row row) throws SQLException {
        Work.Item item = new Work.Item(
                row.number("number"),
                new FrozenExercises.Exercise(
                        row.text("exercise_id"), row.text("version"), row.text("skill"), row.text("ranges")),
                row.longNumber("seed"),
                row.number("weight"),
                row.instant("answered_at") == null ? List.of() : List.of(answer(row)),
                List.of());
        return new Work(
                row.uuid("id"),
                row.uuid("set_id"),
                row.uuid("person_id"),
                row.number("nth"),
                row.instant("begun_at"),
                row.instant("handed_in_at"),
                List.of(item));
    }

    private static ItemAnswer answer(Row row) throws SQLException {
        return new ItemAnswer(
                row.number("part"),
                row.text("typed"),
                row.text("read_value"),
                row.text("read_unit"),
                row.text("read_figures"),
                Verdict.valueOf(row.text("verdict")),
                row.text("slip"),
                row.text("expected"),
                row.number("saves"),
                row.instant("shown_at"),
                row.instant("answered_at"),
                row.text("core_version"));
    }

    private static MarkChange change(Row row) throws SQLException {
        return new MarkChange(
                row.longNumber("id"),
                row.uuid("work_id"),
                row.number("number"),
                row.number("part"),
                MarkChange.Kind.valueOf(row.text("kind")),
                row.number("credit"),
                row.text("verdict"),
                row.text("slip"),
                row.text("expected"),
                row.text("reason"),
                row.uuid("changed_by"),
                row.instant("changed_at"),
                row.uuid("regrade_id"),
                row.text("mended"),
                row.numberOrNull("saves"));
    }

    /** One row for each answer becomes one try with all its items. */
    private static List<Work> fold(List<Work> rows, List<MarkChange> changes) {
        Map<UUID, List<MarkChange>> byWork = changes.stream().collect(Collectors.groupingBy(MarkChange::work));
        Map<UUID, List<Work>> works =
                rows.stream().collect(Collectors.groupingBy(Work::id, LinkedHashMap::new, Collectors.toList()));
        return works.values().stream()
                .map(same -> whole(same, byWork.getOrDefault(same.get(0).id(), List.of())))
                .toList();
    }

    private static Work whole(List<Work> rows, List<MarkChange> changes) {
        Map<Integer, Work.Item> items = new LinkedHashMap<>();
        rows.stream()
                .flatMap(row -> row.items().stream())
                .forEach(item -> items.merge(item.number(), with(item, changes), WorkStore::joined));
        Work first = rows.get(0);
        return new Work(
                first.id(),
                first.set(),
                first.person(),
                first.nth(),
                first.begunAt(),
                first.handedInAt(),
                List.copyOf(items.values()));
    }

    private static Work.Item with(Work.Item item, List<MarkChange> changes) {
        return new Work.Item(
                item.number(),
                item.exercise(),
                item.seed(),
                item.weight(),
                item.answers(),
                changes.stream()
                        .filter(change -> change.number() == item.number())
                        .toList());
    }

    private static Work.Item joined(Work.Item one, Work.Item other) {
        List<ItemAnswer> answers = new ArrayList<>(one.answers());
        answers.addAll(other.answers());
        return new Work.Item(one.number(), one.exercise(), one.seed(), one.weight(), answers, one.changes());
    }
}
