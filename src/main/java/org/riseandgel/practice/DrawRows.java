package org.riseandgel.practice;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
                standing(row));
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
                row.text("core_version"));
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
                new Ladder(row.number("level"), row.number("rung"), row.number("run")));
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
                        row.standing()));
    }
}
