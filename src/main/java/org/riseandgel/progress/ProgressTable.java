package org.riseandgel.progress;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.riseandgel.course.Skill;
import org.riseandgel.platform.table.Column;
import org.riseandgel.platform.table.Table;
import org.riseandgel.practice.StandingView;

/** A board as a table that leaves the program: one row for each person and skill. Moments are in UTC. */
final class ProgressTable {
    private static final List<Column> COLUMNS = List.of(
            Column.text("Name"),
            Column.text("Sign-in name"),
            Column.text("Skill"),
            Column.text("Title"),
            Column.text("State"),
            Column.number("Answers"),
            Column.number("Right"),
            Column.number("Days"),
            Column.number("Wrong in a row"),
            Column.text("Last answer"),
            Column.text("Mastered on"),
            Column.text("Due on"));

    private ProgressTable() {}

    static Table of(Boards.Board board) {
        List<Skill> skills = board.skills();
        return new Table("Progress", COLUMNS, board.rows().stream().flatMap(row -> rows(row, skills)));
    }

    private static Stream<List<Object>> rows(Boards.PersonRow row, List<Skill> skills) {
        List<List<Object>> rows = new ArrayList<>();
        for (int i = 0; i < skills.size(); i++) {
            StandingView cell = row.cells().get(i);
            List<Object> cells = new ArrayList<>();
            cells.add(row.name());
            cells.add(row.signInName());
            cells.add(cell.skill());
            cells.add(skills.get(i).title());
            cells.add(cell.state().words());
            cells.add(cell.answers());
            cells.add(cell.rightAnswers());
            cells.add(cell.days());
            cells.add(cell.wrongInRow());
            cells.add(
                    cell.lastAt() == null
                            ? null
                            : cell.lastAt().truncatedTo(ChronoUnit.SECONDS).toString());
            cells.add(text(cell.masteredOn()));
            cells.add(text(cell.returns().dueOn()));
            rows.add(cells);
        }
        return rows.stream();
    }

    private static String text(Object day) {
        return day == null ? null : day.toString();
    }
}
