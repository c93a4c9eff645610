package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
                   a.shown_at, a.answered_at, a.core_version, a.confidence, a.estimate, a.looked_up,
                   s.answers, s.right_answers, s.average, s.days, s.last_day, s.last_at, s.wrong_in_row, s.right_in_row,
                   s.offered, s.rung, s.run, s.first_day, s.mastered_on, s.return_step, s.due_on, s.right_on_day, s.missed,
                   e.answers AS e_answers, e.wrong_in_row AS e_wrong_in_row, e.last_at AS e_last_at, e.held, e.last_held,
                   e.held_at, e.sure_wrong, e.sure_wrong_draw, e.sure_wrong_part,
                   e.guess, e.guess_right, e.fairly, e.fairly_right, e.sure, e.sure_right,
                   d.with_plan, d.asks_estimate, d.estimate AS draw_estimate, d.looked_up AS draw_looked_up,
                   d.session_id, d.session_number,
                   (SELECT cardinality(p.items) FROM practice_session p WHERE p.id = d.session_id) AS session_items,
                   ARRAY(SELECT extract(epoch FROM l.answered_at - l.shown_at) || ' ' || l.verdict
                         FROM answer l WHERE l.person_id = ? ORDER BY l.answered_at DESC LIMIT 2) AS paces,
                   EXISTS (SELECT 1 FROM asked_in_check c
                           WHERE c.person_id = d.person_id AND c.exercise_id = d.exercise_id) AS asked_in_check
            FROM draw d
            LEFT JOIN answer a ON a.draw_id = d.id
            LEFT JOIN skill_standing s ON s.person_id = d.person_id AND s.skill = d.skill
            LEFT JOIN exercise_standing e
                ON e.person_id = d.person_id AND e.skill = d.skill AND e.exercise_id = d.exercise_id
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
                    last_verdict, wrong_in_row, right_in_row, offered, rung, run, first_day, mastered_on, return_step,
                    due_on, right_on_day, missed)
                SELECT d.person_id, d.skill, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?::date, ?, ?::date, ?, ?
                FROM draw d
                WHERE d.id = ? AND d.person_id = ? AND d.hints_shown = ? AND d.looked_up = ? AND d.finished_at IS NULL
                ON CONFLICT (person_id, skill) DO UPDATE SET
                    answers = EXCLUDED.answers, right_answers = EXCLUDED.right_answers, average = EXCLUDED.average,
                    days = EXCLUDED.days, last_day = EXCLUDED.last_day, last_at = EXCLUDED.last_at,
                    last_verdict = EXCLUDED.last_verdict, wrong_in_row = EXCLUDED.wrong_in_row,
                    right_in_row = EXCLUDED.right_in_row, offered = EXCLUDED.offered, rung = EXCLUDED.rung,
                    run = EXCLUDED.run, mastered_on = EXCLUDED.mastered_on, return_step = EXCLUDED.return_step,
                    due_on = EXCLUDED.due_on, right_on_day = EXCLUDED.right_on_day, missed = EXCLUDED.missed
                WHERE skill_standing.answers = ?
                RETURNING person_id, skill),
            known AS (
                INSERT INTO exercise_standing (person_id, skill, exercise_id, answers, wrong_in_row, last_at, held,
                    last_held, held_at, sure_wrong, sure_wrong_draw, sure_wrong_part, guess, guess_right, fairly,
                    fairly_right, sure, sure_right)
                SELECT moved.person_id, moved.skill, ?, ?, ?, ?, ?::text, ?::text, ?::timestamptz, ?::text, ?::uuid, ?, ?,
                    ?, ?, ?, ?, ?
                FROM moved
                ON CONFLICT (person_id, skill, exercise_id) DO UPDATE SET
                    answers = EXCLUDED.answers, wrong_in_row = EXCLUDED.wrong_in_row, last_at = EXCLUDED.last_at,
                    held = EXCLUDED.held, last_held = EXCLUDED.last_held, held_at = EXCLUDED.held_at,
                    sure_wrong = EXCLUDED.sure_wrong, sure_wrong_draw = EXCLUDED.sure_wrong_draw,
                    sure_wrong_part = EXCLUDED.sure_wrong_part, guess = EXCLUDED.guess,
                    guess_right = EXCLUDED.guess_right, fairly = EXCLUDED.fairly, fairly_right = EXCLUDED.fairly_right,
                    sure = EXCLUDED.sure, sure_right = EXCLUDED.sure_right),
            given AS (
                INSERT INTO answer (draw_id, part, person_id, typed, read_value, read_unit, read_figures, verdict, slip,
                    expected, hints, shown_at, answered_at, core_version, confidence, estimate, looked_up)
                SELECT ?, ?, moved.person_id, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?::text, ?::smallint, ?
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
            INSERT INTO draw (id, person_id, exercise_id, version, skill, level, seed, drawn_at, with_plan,
                asks_estimate, session_id, session_number, at_bench)
            VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?::boolean, ?::uuid, ?::smallint, ?)
            ON CONFLICT DO NOTHING
            RETURNING id""";

    private final Sql sql;

    DrawStore(Sql sql) {
        this.sql = sql;
    }

    /** The draw of that person, with its answers and the standing as they are at this one moment. */
    Optional<StoredDraw> load(UUID person, UUID draw) {
        return DrawRows.fold(sql.list(LOAD, DrawRows::draw, person, draw, person));
    }

    /** The open draw of a skill at a level. */
    Optional<UUID> open(UUID person, String skill, int level) {
        return sql.first(
                "SELECT id FROM draw WHERE person_id = ? AND skill = ? AND level = ? AND finished_at IS NULL"
                        + " AND session_id IS NULL AND NOT at_bench",
                row -> row.uuid("id"),
                person,
                skill,
                level);
    }

    /** The draw at that place of a session. */
    Optional<UUID> ofSession(UUID session, int number) {
        return sql.first(
                "SELECT id FROM draw WHERE session_id = ? AND session_number = ?",
                row -> row.uuid("id"),
                session,
                number);
    }

    /** Which exercises of a skill a person has answered, when last, and which of them are held. */
    record Known(Map<String, Instant> lastAt, Set<String> held) {}

    Known known(UUID person, String skill) {
        Map<String, Instant> lastAt = new HashMap<>();
        Set<String> held = new HashSet<>();
        sql.list(
                        "SELECT exercise_id, last_at, held FROM exercise_standing WHERE person_id = ? AND skill = ?",
                        row -> {
                            lastAt.put(row.text("exercise_id"), row.instant("last_at"));
                            return row.text("held") == null ? "" : row.text("exercise_id");
                        },
                        person,
                        skill)
                .forEach(held::add);
        return new Known(lastAt, held);
    }

    /** What the person drew latest, and whether it is time for an estimate. */
    record Latest(List<String> exercises, List<String> estimates) {
        /** Whether none of the latest two draws that could ask for an estimate asked for one. */
        boolean isEstimateTime() {
            return estimates.size() == 2 && !estimates.contains("true");
        }

        Optional<String> exercise() {
            return exercises.stream().findFirst();
        }
    }

    /** The latest draws of a person, newest first. */
    Latest latest(UUID person) {
        return sql.first(
                        """
                        SELECT ARRAY(SELECT exercise_id FROM draw WHERE person_id = ? ORDER BY drawn_at DESC LIMIT 1)
                                   AS exercises,
                               ARRAY(SELECT asks_estimate::text FROM draw
                                     WHERE person_id = ? AND asks_estimate IS NOT NULL
                                     ORDER BY drawn_at DESC LIMIT 2) AS estimates""",
                        row -> new Latest(row.texts("exercises"), row.texts("estimates")),
                        person,
                        person)
                .orElseThrow();
    }

    /** The open draw of an exercise that is done at the bench. */
    Optional<UUID> openAtBench(UUID person, String exercise) {
        return sql.first(
                "SELECT id FROM draw WHERE person_id = ? AND exercise_id = ? AND finished_at IS NULL AND at_bench",
                row -> row.uuid("id"),
                person,
                exercise);
    }

    /** Stores a new draw with the text it was drawn from; empty when another request has just opened one. */
    Optional<UUID> add(StoredDraw draw, String sourceText) {
        return add(draw, sourceText, false);
    }

    /**
     * Stores a new draw with the text it was drawn from; empty when another request has just opened one.
     *
     * @param atBench whether it is done at the bench with the salt
     */
    Optional<UUID> add(StoredDraw draw, String sourceText, boolean atBench) {
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
                draw.drawnAt(),
                draw.setting().withPlan(),
                draw.setting().asksEstimate(),
                draw.setting().session(),
                draw.setting().number(),
                atBench);
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

    /** Keeps an estimate, if one was asked and none was given; the first one stays. */
    void estimate(UUID person, UUID draw, int exponent) {
        sql.change(
                """
                UPDATE draw SET estimate = ?
                WHERE id = ? AND person_id = ? AND finished_at IS NULL AND asks_estimate AND estimate IS NULL""",
                exponent,
                draw,
                person);
    }

    /**
     * Stores an answer with the standing that follows from it, and ends the draw after its last part. False, and nothing
     * stored, when the draw or the standing has moved on since it was loaded.
     */
    boolean store(Marking.Marked marked) {
        StoredDraw draw = marked.draw();
        StoredAnswer answer = marked.answer();
        List<Object> values = new ArrayList<>();
        addStanding(values, answer, marked.after());
        Collections.addAll(
                values,
                draw.id(),
                draw.person(),
                draw.hintsShown(),
                draw.setting().lookedUp(),
                draw.standing().answers());
        addExercise(values, draw.exercise(), marked.with());
        addAnswer(values, draw.id(), answer);
        Collections.addAll(values, answer.answeredAt(), marked.last());
        return sql.any(STORE, values.toArray());
    }

    private static void addStanding(List<Object> values, StoredAnswer answer, Standing after) {
        Collections.addAll(
                values,
                after.answers(),
                after.rightAnswers(),
                after.average(),
                after.days(),
                after.lastDay(),
                after.lastAt(),
                answer.verdict(),
                after.wrongInRow(),
                after.rightInRow(),
                after.ladder().offered().number(),
                after.ladder().rung().number(),
                after.ladder().run(),
                after.firstDay(),
                after.masteredOn(),
                after.returns().step(),
                after.returns().dueOn(),
                after.returns().rightOnDay(),
                after.returns().missed());
    }

    private static void addExercise(List<Object> values, String exercise, ExerciseStanding with) {
        Collections.addAll(
                values,
                exercise,
                with.answers(),
                with.wrongInRow(),
                with.lastAt(),
                name(with.held()),
                name(with.lastHeld()),
                with.heldAt(),
                name(with.sureWrong()),
                with.sureWrongDraw(),
                with.sureWrongPart(),
                with.tally().guess(),
                with.tally().guessRight(),
                with.tally().fairly(),
                with.tally().fairlyRight(),
                with.tally().sure(),
                with.tally().sureRight());
    }

    private static void addAnswer(List<Object> values, UUID draw, StoredAnswer answer) {
        Collections.addAll(
                values,
                draw,
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
                name(answer.said().confidence()),
                answer.said().estimate(),
                answer.said().lookedUp());
    }

    private static String name(Enum<?> constant) {
        return constant == null ? null : constant.name();
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
