package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.table.Column;
import org.riseandgel.platform.table.Table;

/** Results of a set as tables that leave the program. Moments are in UTC, as ISO 8601 writes them. */
@ApplicationScoped
class Exports {
    private static final int FIGURE_PLACES = 4;

    private final Results results;
    private final ItemReviews reviews;
    private final PartViews parts;
    private final SchoolSettings school;

    Exports(Results results, ItemReviews reviews, PartViews parts, SchoolSettings school) {
        this.results = results;
        this.reviews = reviews;
        this.parts = parts;
        this.school = school;
    }

    /** One row for each try, with the points of each item; one without points for who has not begun. */
    Table results(GradedSet set) {
        List<Column> columns = new ArrayList<>(List.of(
                Column.text("Name"),
                Column.text("Sign-in name"),
                Column.number("Try"),
                Column.text("Counts"),
                Column.text("Begun"),
                Column.text("Handed in")));
        IntStream.rangeClosed(1, set.items()).forEach(number -> columns.add(Column.number("Item " + number)));
        columns.addAll(List.of(Column.number("Points"), Column.number("Out of"), Column.number("Percent")));
        return new Table("Results", columns, results.rows(set).stream().flatMap(row -> rows(set, row)));
    }

    private Stream<List<Object>> rows(GradedSet set, Results.PersonRow row) {
        if (row.tries().isEmpty()) {
            List<Object> cells = new ArrayList<>(Arrays.asList(new Object[set.items() + 9]));
            cells.set(0, row.name());
            cells.set(1, row.signInName());
            return Stream.of(cells);
        }
        return row.tries().stream().map(one -> {
            List<Object> cells = new ArrayList<>();
            cells.add(row.name());
            cells.add(row.signInName());
            cells.add(one.work().nth());
            cells.add(row.tries().size() == 1 || one.best() ? "yes" : "no");
            cells.add(stamp(one.work().begunAt()));
            cells.add(stamp(one.work().handedInAt()));
            cells.addAll(one.itemPoints());
            cells.add(Score.written(one.score().points()));
            cells.add(one.score().outOf());
            cells.add(one.score().percent());
            return cells;
        });
    }

    /** One row for each part of each try: what was asked, typed, read, expected and judged. */
    Table answers(GradedSet set) {
        List<Column> columns = List.of(
                Column.text("Name"),
                Column.text("Sign-in name"),
                Column.number("Try"),
                Column.number("Item"),
                Column.number("Part"),
                Column.text("Exercise"),
                Column.text("Version"),
                Column.text("Question"),
                Column.text("Typed"),
                Column.text("Read as"),
                Column.text("Right answer"),
                Column.text("Verdict"),
                Column.number("Counts percent"),
                Column.text("Changed because"),
                Column.number("Seconds"),
                Column.text("Answered"));
        return new Table("Answers", columns, results.rows(set).stream().flatMap(row -> row.tries().stream()
                .flatMap(one -> answers(row, one))));
    }

    private Stream<List<Object>> answers(Results.PersonRow row, Results.TryRow one) {
        DecimalMark mark = school.decimalMark();
        return one.work().items().stream()
                .flatMap(item -> parts.told(item).stream().map(told -> {
                    DrawnExercise drawn = parts.drawn(item);
                    List<Object> cells = new ArrayList<>();
                    cells.add(row.name());
                    cells.add(row.signInName());
                    cells.add(one.work().nth());
                    cells.add(item.number());
                    cells.add(told.part() + 1);
                    cells.add(drawn.template().title());
                    cells.add(item.exercise().version());
                    cells.add((drawn.story(mark) + " " + told.prompt()).strip());
                    cells.add(told.typed());
                    cells.add(told.asRead());
                    cells.add(told.expected());
                    cells.add(told.mark().words());
                    cells.add(told.credit());
                    cells.add(told.change() == null ? null : told.change().reason());
                    cells.add(told.time() == null ? null : told.time().toSeconds());
                    cells.add(item.answer(told.part())
                            .map(answer -> stamp(answer.answeredAt()))
                            .orElse(null));
                    return cells;
                }));
    }

    /** One row for each exercise with its figures; those that are not told are left empty. */
    Table items(GradedSet set) {
        List<Column> columns = List.of(
                Column.text("Exercise"),
                Column.text("Title"),
                Column.number("Level"),
                Column.number("People"),
                Column.number("Facility"),
                Column.number("Facility 95 % from"),
                Column.number("Facility 95 % to"),
                Column.number("Discrimination"),
                Column.number("Median seconds"),
                Column.text("Slips"),
                Column.number("Wrong answers"),
                Column.number("Share without a slip"));
        return new Table("Items", columns, reviews.of(set).stream().map(Exports::row));
    }

    private static List<Object> row(ItemReviews.Line line) {
        ItemReview.Figures figures = line.figures();
        List<Object> cells = new ArrayList<>();
        cells.add(figures.exercise());
        cells.add(line.title());
        cells.add(line.level());
        cells.add(figures.people());
        cells.add(number(figures.facility()));
        cells.add(figures.isTold() ? number(figures.likely().low()) : null);
        cells.add(figures.isTold() ? number(figures.likely().high()) : null);
        cells.add(number(figures.discrimination().orElse(Double.NaN)));
        cells.add(figures.medianTime() == null ? null : figures.medianTime().toSeconds());
        cells.add(line.slipWords());
        cells.add(figures.isTold() ? figures.wrongs() : null);
        cells.add(number(figures.unexplained()));
        return cells;
    }

    /** Four places; nothing for what is no number. */
    private static BigDecimal number(double value) {
        return Double.isNaN(value) ? null : BigDecimal.valueOf(value).setScale(FIGURE_PLACES, RoundingMode.HALF_UP);
    }

    private static String stamp(Instant at) {
        return at == null ? null : at.truncatedTo(ChronoUnit.SECONDS).toString();
    }
}
