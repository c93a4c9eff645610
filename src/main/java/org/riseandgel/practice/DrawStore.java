package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.platform.sql.Sql;

/**
 * Draws and answers in the database. By SQL, because storing an answer is one statement that an entity could not send:
 * it inserts, moves the standing and ends the draw on one condition, in one journey.
 */
@ApplicationScoped
class DrawStore {
    private static final String LOAD =
            """
            SELECT d.id, d.person_id, d.exercise_id, d.version, d.skill, d.level AS draw_level, d.seed, d.drawn_at,
                   d.finished_at, d.hints_shown,
                   a.part, a.typed, a.read_value, a.read_unit, a.read_figures, a.verdict, a.slip, a.expected, a.hints,
                   a.shown_at, a.answered_at, a.core_version,
                   s.answers, s.right_answers, s.average, s.days, s.last_day, s.last_at, s.wrong_in_row, s.right_in_row,
                   s.level, s.rung, s.run
            FROM draw d
            LEFT JOIN answer a ON a.draw_id = d.id
            LEFT JOIN skill_standing s ON s.person_id = d.person_id AND s.skill = d.skill
            WHERE d.id = ? AND d.person_id = ?
            ORDER BY a.part""";

    /**
     * One statement, one journey, one commit. The standing is written only if it is still the one the new one was worked
     * out from; the answer is written only with it. Of two answers that come at once, the second finds the standing
     * moved on and writes nothing.
     */
    private static final String STORE =
            """
            WITH moved AS (
                INSERT INTO skill_standing (person_id, skill, answers, right_answers, average, days, last_day, last_at,
                    last_verdict, wrong_in_row, right_in_row, level, rung, run)
                SELECT d.person_id, d.skill, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
                FROM draw d
                WHERE d.id = ? AND d.person_id = ? AND d.hints_shown = ? AND d.finished_at IS NULL
                ON CONFLICT (person_id, skill) DO UPDATE SET
                    answers = EXCLUDED.answers, right_answers = EXCLUDED.right_answers, average = EXCLUDED.average,
                    days = EXCLUDED.days, last_day = EXCLUDED.last_day, last_at = EXCLUDED.last_at,
                    last_verdict = EXCLUDED.last_verdict, wrong_in_row = EXCLUDED.wrong_in_row,
                    right_in_row = EXCLUDED.right_in_row, level = EXCLUDED.level, rung = EXCLUDED.rung,
                    run = EXCLUDED.run
                WHERE skill_standing.answers = ?
                RETURNING person_id),
            given AS (
                INSERT INTO answer (draw_id, part, person_id, typed, read_value, read_unit, read_figures, verdict, slip,
                    expected, hints, shown_at, answered_at, core_version)
                SELECT ?, ?, moved.person_id, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
                FROM moved
                RETURNING draw_id),
            ended AS (
                UPDATE draw SET finished_at = ?
                FROM given
                WHERE draw.id = given.draw_id AND ?)
            SELECT draw_id FROM given""";

    private static final String DRAW =
            """
            WITH text_kept AS (
                INSERT INTO exercise_version (exercise_id, version, source_text, first_used)
                VALUES (?, ?, ?, ?)
                ON CONFLICT DO NOTHING)
            INSERT INTO draw (id, person_id, exercise_id, version, skill, level, seed, drawn_at)
            VALUES (?, ?, ?, ?, ?, ?, ?, ?)
            ON CONFLICT (person_id, skill, level) WHERE finished_at IS NULL DO NOTHING
            RETURNING id""";

    private final Sql sql;

    DrawStore(Sql sql) {
        this.sql = sql;
    }

    /** The draw of that person, with its answers and the standing as they are at this one moment. */
    Optional<StoredDraw> load(UUID person, UUID draw) {
        return DrawRows.fold(sql.list(LOAD, DrawRows::draw, draw, person));
    }

    /** The open draw of a skill at a level. */
    Optional<UUID> open(UUID person, String skill, int level) {
        return sql.first(
                "SELECT id FROM draw WHERE person_id = ? AND skill = ? AND level = ? AND finished_at IS NULL",
                row -> row.uuid("id"),
                person,
                skill,
                level);
    }

    /** The exercise of the latest draw of a skill. */
    Optional<String> lastExercise(UUID person, String skill) {
        return sql.first(
                "SELECT exercise_id FROM draw WHERE person_id = ? AND skill = ? ORDER BY drawn_at DESC LIMIT 1",
                row -> row.text("exercise_id"),
                person,
                skill);
    }

    /** Stores a new draw with the text it was drawn from; empty when another request has just opened one. */
    Optional<UUID> add(StoredDraw draw, String sourceText) {
        return sql.first(
                DRAW,
                row -> row.uuid("id"),
                draw.exercise(),
                draw.version(),
                sourceText,
                draw.drawnAt(),
                draw.id(),
                draw.person(),
                draw.exercise(),
                draw.version(),
                draw.skill(),
                draw.level(),
                draw.seed(),
                draw.drawnAt());
    }

    /** Closes a draw that cannot be worked any more. */
    void close(UUID person, UUID draw, Instant at) {
        sql.change(
                "UPDATE draw SET finished_at = ? WHERE id = ? AND person_id = ? AND finished_at IS NULL",
                at,
                draw,
                person);
    }

    /** Opens one more hint, if there is one more. */
    void showHint(UUID person, UUID draw, int hints) {
        sql.change(
                """
                UPDATE draw SET hints_shown = hints_shown + 1
                WHERE id = ? AND person_id = ? AND finished_at IS NULL AND hints_shown < ?""",
                draw,
                person,
                hints);
    }

    /**
     * Stores an answer with the standing that follows from it, and ends the draw after its last part. False, and nothing
     * stored, when the draw or the standing has moved on since it was loaded.
     */
    boolean store(StoredDraw draw, StoredAnswer answer, Standing after, boolean last) {
        return sql.any(
                STORE,
                after.answers(),
                after.rightAnswers(),
                after.average(),
                after.days(),
                after.lastDay(),
                after.lastAt(),
                answer.verdict(),
                after.wrongInRow(),
                after.rightInRow(),
                after.ladder().level(),
                after.ladder().rung(),
                after.ladder().run(),
                draw.id(),
                draw.person(),
                draw.hintsShown(),
                draw.standing().answers(),
                draw.id(),
                answer.part(),
                answer.typed(),
                answer.readValue(),
                answer.readUnit(),
                answer.readFigures(),
                answer.verdict(),
                answer.slip(),
                answer.expected(),
                answer.hints(),
                answer.shownAt(),
                answer.answeredAt(),
                answer.coreVersion(),
                answer.answeredAt(),
                last);
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
