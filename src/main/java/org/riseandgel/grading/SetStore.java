package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.platform.sql.Row;
import org.riseandgel.platform.sql.Sql;

/**
 * Graded sets in the database. By SQL, because the statements carry the rules: a draft is saved only over the revision
 * that was seen, and published only once.
 */
@ApplicationScoped
class SetStore {
    private static final String HEADER =
            """
            SELECT s.id, s.cohort_id, s.title, s.note, s.state, s.revision, s.tries, s.feedback, s.opens_local,
                   s.closes_local, s.opens_at, s.closes_at, s.changed_by, s.changed_at, s.published_at, s.withdrawn_at,
                   s.withdrawn_reason
            FROM graded_set s
            """;

    private final Sql sql;

    SetStore(Sql sql) {
        this.sql = sql;
    }

    Optional<GradedSet> find(UUID set) {
        return withLines(sql.list(HEADER + "WHERE s.id = ?", SetStore::header, set)).stream()
                .findFirst();
    }

    /** The sets of these cohorts, those that close last first, drafts on top. */
    List<GradedSet> ofCohorts(List<UUID> cohorts) {
        return withLines(sql.list(
                HEADER + "WHERE s.cohort_id = ANY(?::uuid[]) ORDER BY s.closes_at DESC NULLS FIRST, s.title, s.id",
                SetStore::header,
                (Object) texts(cohorts)));
    }

    /** The sets that were published for these cohorts or that the person has worked, those that close last first. */
    List<GradedSet> forLearner(UUID person, List<UUID> cohorts) {
        return withLines(sql.list(
                HEADER
                        + """
                        WHERE s.published_at IS NOT NULL AND (s.cohort_id = ANY(?::uuid[])
                            OR EXISTS (SELECT 1 FROM graded_work w WHERE w.set_id = s.id AND w.person_id = ?))
                        ORDER BY s.closes_at DESC, s.title, s.id""",
                SetStore::header,
                texts(cohorts),
                person));
    }

    /** Somebody who has begun a set. */
    record Worker(UUID set, UUID person, boolean handedIn) {}

    /** Who has begun each set, and whether they handed it in. */
    Map<UUID, List<Worker>> workers(List<UUID> sets) {
        return sql
                .list(
                        """
                        SELECT set_id, person_id, bool_or(handed_in_at IS NOT NULL) AS handed_in FROM graded_work
                        WHERE set_id = ANY(?::uuid[]) GROUP BY set_id, person_id""",
                        row -> new Worker(row.uuid("set_id"), row.uuid("person_id"), row.flag("handed_in")),
                        (Object) texts(sets))
                .stream()
                .collect(Collectors.groupingBy(Worker::set));
    }

    void add(GradedSet set, UUID by, Instant now) {
        sql.change(
                """
                INSERT INTO graded_set (id, cohort_id, title, note, state, revision, tries, feedback, opens_local,
                    closes_local, created_by, created_at, changed_by, changed_at)
                VALUES (?, ?, ?, ?, 'DRAFT', 1, ?, ?, ?, ?, ?, ?, ?, ?)""",
                set.id(),
                set.cohort(),
                set.title(),
                set.note(),
                set.tries(),
                set.feedback().name(),
                set.opensLocal(),
                set.closesLocal(),
                by,
                now,
                by,
                now);
        set.lines().forEach(line -> add(set.id(), line));
    }

    /** Saves a draft over the revision that it carries; false, and nothing saved, when there is a newer one. */
    boolean save(GradedSet draft, UUID by, Instant now) {
        boolean saved = sql.change(
                        """
                        UPDATE graded_set SET cohort_id = ?, title = ?, note = ?, tries = ?, feedback = ?,
                            opens_local = ?, closes_local = ?, changed_by = ?, changed_at = ?, revision = revision + 1
                        WHERE id = ? AND state = 'DRAFT' AND revision = ?""",
                        draft.cohort(),
                        draft.title(),
                        draft.note(),
                        draft.tries(),
                        draft.feedback().name(),
                        draft.opensLocal(),
                        draft.closesLocal(),
                        by,
                        now,
                        draft.id(),
                        draft.revision())
                == 1;
        if (saved) {
            sql.change("DELETE FROM graded_line WHERE set_id = ?", draft.id());
            draft.lines().forEach(line -> add(draft.id(), line));
        }
        return saved;
    }

    private void add(UUID set, Line line) {
        sql.change(
                """
                INSERT INTO graded_line (id, set_id, place, exercise_id, skill, level, items, weight, ranges)
                VALUES (?, ?, ?, ?, ?, nullif(?, 0), ?, ?, ?)""",
                line.id(),
                set,
                line.place(),
                line.exercise(),
                line.skill(),
                line.level(),
                line.items(),
                line.weight(),
                line.ranges());
    }

    /** Publishes the revision that was seen; false, and nothing done, when there is a newer one or it is no draft. */
    boolean publish(GradedSet draft, Publication out, UUID by, Instant now) {
        return sql.change(
                        """
                        UPDATE graded_set SET state = 'PUBLISHED', zone = ?, opens_at = ?, closes_at = ?,
                            published_by = ?, published_at = ?, revision = revision + 1
                        WHERE id = ? AND state = 'DRAFT' AND revision = ?""",
                        out.zone().getId(),
                        out.opensAt(),
                        out.closesAt(),
                        by,
                        now,
                        draft.id(),
                        draft.revision())
                == 1;
    }

    /** When and where a set that is published opens and closes. */
    record Publication(ZoneId zone, Instant opensAt, Instant closesAt) {}

    /** Freezes an exercise that a line gives or draws from. */
    void freeze(UUID line, ExerciseTemplate template, Instant now) {
        keepText(template, now);
        sql.change(
                "INSERT INTO graded_pool (line_id, exercise_id, version, skill) VALUES (?, ?, ?, ?)",
                line,
                template.id(),
                template.version(),
                template.skill());
    }

    /** Keeps the text of a version for ever. */
    void keepText(ExerciseTemplate template, Instant now) {
        sql.change(
                """
                INSERT INTO exercise_version (exercise_id, version, source_text, first_used)
                VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING""",
                template.id(),
                template.version(),
                template.file().text(),
                now);
    }

    /** Puts a draft away; false, and nothing done, when there is a newer revision or it is no draft. */
    boolean discard(UUID set, int revision, UUID by, Instant now) {
        return sql.change(
                        """
                        UPDATE graded_set SET state = 'WITHDRAWN', withdrawn_by = ?, withdrawn_at = ?,
                            withdrawn_reason = 'Put away as a draft', revision = revision + 1
                        WHERE id = ? AND state = 'DRAFT' AND revision = ?""",
                        by,
                        now,
                        set,
                        revision)
                == 1;
    }

    boolean withdraw(UUID set, String reason, UUID by, Instant now) {
        return sql.change(
                        """
                        UPDATE graded_set SET state = 'WITHDRAWN', withdrawn_by = ?, withdrawn_at = ?,
                            withdrawn_reason = ?, revision = revision + 1
                        WHERE id = ? AND state = 'PUBLISHED'""",
                        by,
                        now,
                        reason,
                        set)
                == 1;
    }

    /** What a published line gives or draws from. */
    record Frozen(UUID line, String exercise, String version, String skill) {}

    List<Frozen> pool(UUID set) {
        return sql.list(
                """
                SELECT p.line_id, p.exercise_id, p.version, p.skill
                FROM graded_pool p JOIN graded_line l ON l.id = p.line_id
                WHERE l.set_id = ? ORDER BY l.place, p.exercise_id""",
                row -> new Frozen(row.uuid("line_id"), row.text("exercise_id"), row.text("version"), row.text("skill")),
                set);
    }

    /**
     * More time for one person.
     *
     * @param freshTry whether it came with one more try, because the answers of the open one had been told
     */
    record Extension(UUID person, Instant closesAt, String reason, UUID givenBy, Instant givenAt, boolean freshTry) {}

    void extend(UUID set, Extension extension) {
        sql.change(
                """
                INSERT INTO graded_extension (id, set_id, person_id, closes_at, reason, given_by, given_at, fresh_try)
                VALUES (?, ?, ?, ?, ?, ?, ?, ?)""",
                UUID.randomUUID(),
                set,
                extension.person(),
                extension.closesAt(),
                extension.reason(),
                extension.givenBy(),
                extension.givenAt(),
                extension.freshTry());
    }

    /** All extensions of a set in the order in which they were given; the last one of a person counts. */
    List<Extension> extensions(UUID set) {
        return sql.list(
                """
                SELECT person_id, closes_at, reason, given_by, given_at, fresh_try
                FROM graded_extension WHERE set_id = ? ORDER BY given_at, id DESC""",
                row -> new Extension(
                        row.uuid("person_id"),
                        row.instant("closes_at"),
                        row.text("reason"),
                        row.uuid("given_by"),
                        row.instant("given_at"),
                        row.flag("fresh_try")),
                set);
    }

    private List<GradedSet> withLines(List<GradedSet> sets) {
        Map<UUID, List<Line>> lines = lines(sets.stream().map(GradedSet::id).toList());
        return sets.stream()
                .map(set -> set.with(lines.getOrDefault(set.id(), List.of())))
                .toList();
    }

    private record OfSet(UUID set, Line line) {}

    private Map<UUID, List<Line>> lines(List<UUID> sets) {
        if (sets.isEmpty()) {
            return Map.of();
        }
        return sql
                .list(
                        """
                        SELECT id, set_id, place, exercise_id, skill, level, items, weight, ranges FROM graded_line
                        WHERE set_id = ANY(?::uuid[]) ORDER BY place""",
                        SetStore::line,
                        (Object) texts(sets))
                .stream()
                .collect(Collectors.groupingBy(OfSet::set, Collectors.mapping(OfSet::line, Collectors.toList())));
    }

    private static OfSet line(Row row) throws SQLException {
        return new OfSet(
                row.uuid("set_id"),
                new Line(
                        row.uuid("id"),
                        row.number("place"),
                        row.text("exercise_id"),
                        row.text("skill"),
                        row.number("level"),
                        row.number("items"),
                        row.number("weight"),
                        row.text("ranges")));
    }

    private static GradedSet header(Row row) throws SQLException {
        return new GradedSet(
                row.uuid("id"),
                row.uuid("cohort_id"),
                row.text("title"),
                row.text("note"),
                SetState.valueOf(row.text("state")),
                row.number("revision"),
                row.number("tries"),
                Policy.valueOf(row.text("feedback")),
                row.dateTime("opens_local"),
                row.dateTime("closes_local"),
                row.instant("opens_at"),
                row.instant("closes_at"),
                row.uuid("changed_by"),
                row.instant("changed_at"),
                row.instant("published_at"),
                row.instant("withdrawn_at"),
                row.text("withdrawn_reason"),
                List.of());
    }

    private static String[] texts(List<UUID> ids) {
        return ids.stream().map(UUID::toString).toArray(String[]::new);
    }
}
