package org.riseandgel.practice;

import java.math.BigDecimal;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.riseandgel.exercise.Verdict;
import org.riseandgel.platform.sql.Row;

/** Makes records of rows of draws, answers and standings. */
final class DrawRows {
    private DrawRows() {}

    static StoredDraw draw(Row row) throws SQLException {
        return new StoredDraw(
                row.uuid("id"),
                row.uuid("person_id"),
                row.text("exercise_id"),
                row.text("version"),
                row.text("skill"),
                row.number("draw_level"),
                row.longNumber("seed"),
                row.instant("drawn_at"),
                row.instant("finished_at"),
                row.number("hints_shown"),
                row.instant("answered_at") == null ? List.of() : List.of(answer(row)),
                standing(row),
                withExercise(row),
                setting(row),
                row.texts("paces").stream().map(DrawRows::pace).toList(),
                row.flag("asked_in_check"));
    }

    private static StoredDraw.Setting setting(Row row) throws SQLException {
        return new StoredDraw.Setting(
                row.flag("with_plan"),
                row.flagOrNull("asks_estimate"),
                row.numberOrNull("draw_estimate"),
                row.flag("draw_looked_up"),
                row.uuid("session_id"),
                row.numberOrNull("session_number"),
                row.numberOrNull("session_items"));
    }

    /** "2.31 RIGHT" */
    private static FastGuess.Pace pace(String text) {
        int space = text.indexOf(' ');
        BigDecimal seconds = new BigDecimal(text.substring(0, space));
        return new FastGuess.Pace(
                Duration.ofMillis(seconds.movePointRight(3).longValue()),
                Verdict.valueOf(text.substring(space + 1)).isRight());
    }

    static ExerciseStanding withExercise(Row row) throws SQLException {
        if (row.instant("e_last_at") == null) {
            return ExerciseStanding.NONE;
        }
        return new ExerciseStanding(
                row.number("e_answers"),
                row.number("e_wrong_in_row"),
                row.instant("e_last_at"),
                named(Held.class, row.text("held")),
                named(Held.class, row.text("last_held")),
                row.instant("held_at"),
                named(SureWrong.class, row.text("sure_wrong")),
                row.uuid("sure_wrong_draw"),
                row.number("sure_wrong_part"),
                tally(row));
    }

    static ExerciseStanding.Tally tally(Row row) throws SQLException {
        return new ExerciseStanding.Tally(
                row.number("guess"),
                row.number("guess_right"),
                row.number("fairly"),
                row.number("fairly_right"),
                row.number("sure"),
                row.number("sure_right"));
    }

    /** The constant of that name; null for null. */
    static <E extends Enum<E>> E named(Class<E> type, String name) {
        return name == null ? null : Enum.valueOf(type, name);
    }

    static StoredAnswer answer(Row row) throws SQLException {
        return new StoredAnswer(
                row.number("part"),
                row.text("typed"),
                row.text("read_value"),
                row.text("read_unit"),
                row.text("read_figures"),
                row.text("verdict"),
                row.text("slip"),
                row.text("expected"),
                row.number("hints"),
                row.instant("shown_at"),
                row.instant("answered_at"),
                row.text("core_version"),
                new StoredAnswer.Said(
                        named(Confidence.class, row.text("confidence")),
                        row.numberOrNull("estimate"),
                        row.flag("looked_up")));
    }

    static Standing standing(Row row) throws SQLException {
        if (row.instant("last_at") == null) {
            return Standing.NONE;
        }
        return new Standing(
                row.number("answers"),
                row.number("right_answers"),
                row.decimal("average"),
                row.number("days"),
                row.date("last_day"),
                row.instant("last_at"),
                row.number("wrong_in_row"),
                row.number("right_in_row"),
                new Ladder(Rung.of(row.number("offered")), Rung.of(row.number("rung")), row.number("run")),
                row.date("first_day"),
                row.date("mastered_on"),
                new Returns(
                        row.number("return_step"), row.date("due_on"), row.number("right_on_day"), row.flag("missed")));
    }

    /** One row for each answer becomes one draw with all of them. */
    static Optional<StoredDraw> fold(List<StoredDraw> rows) {
        List<StoredAnswer> answers = new ArrayList<>();
        rows.forEach(row -> answers.addAll(row.answers()));
        return rows.stream()
                .findFirst()
                .map(row -> new StoredDraw(
                        row.id(),
                        row.person(),
                        row.exercise(),
                        row.version(),
                        row.skill(),
                        row.level(),
                        row.seed(),
                        row.drawnAt(),
                        row.finishedAt(),
                        row.hintsShown(),
                        List.copyOf(answers),
                        row.standing(),
                        row.withExercise(),
                        row.setting(),
                        row.paces(),
                        row.askedInCheck()));
    }
}
