package org.riseandgel.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Quantity;

/**
 * Reads a table of readings as it is typed or pasted: a reading to a line, its quantities parted by a semicolon or a tab.
 * A bar does for a new line where there is only one. Empty lines are passed over. What is wrong is told line by line.
 */
final class ReadingLines {
    static final int LONGEST = 4000;
    static final int MOST = 60;

    private final Input.Readings table;
    private final BiFunction<Input.Measured, String, Quantity> cell;
    private final QuantityText text;

    ReadingLines(Input.Readings table, BiFunction<Input.Measured, String, Quantity> cell, QuantityText text) {
        this.table = table;
        this.cell = cell;
        this.text = text;
    }

    /** The lines that can be read; problems of the others are added. Nothing typed is the example. */
    List<Given.Row> read(String typed, List<FieldProblem> problems) {
        if (typed.isBlank()) {
            return table.exampleRows();
        }
        List<String> lines = List.of(typed.split("\\R|\\|"));
        long written = lines.stream().filter(line -> !line.isBlank()).count();
        if (typed.length() > LONGEST || written > MOST) {
            problems.add(new FieldProblem(
                    table.name(),
                    "%s: there are %d lines and %d characters. Write at most %d lines and %d characters."
                            .formatted(table.label(), written, typed.length(), MOST, LONGEST)));
            return List.of();
        }
        return IntStream.range(0, lines.size())
                .filter(i -> !lines.get(i).isBlank())
                .mapToObj(i -> row(i + 1, lines.get(i), problems))
                .flatMap(Optional::stream)
                .toList();
    }

    /** A row as somebody would type it. */
    static String written(Input.Readings table, Given.Row row, QuantityText text) {
        return IntStream.range(0, table.columns().size())
                .mapToObj(
                        i -> text.of(row.cells().get(i), table.columns().get(i).unit()))
                .collect(Collectors.joining("; "));
    }

    private Optional<Given.Row> row(int line, String typed, List<FieldProblem> problems) {
        String[] cells = typed.strip().split("[;\t]", -1);
        try {
            requireAll(line, typed, cells.length);
            List<Quantity> quantities = new ArrayList<>();
            for (int column = 0; column < cells.length; column++) {
                quantities.add(cell.apply(table.cell(line, column), cells[column]));
            }
            return Optional.of(new Given.Row(quantities));
        } catch (OutOfRangeException refused) {
            problems.add(new FieldProblem(table.name(), text.closed(refused.getMessage())));
            return Optional.empty();
        }
    }

    private void requireAll(int line, String typed, int found) {
        int wanted = table.columns().size();
        if (found != wanted) {
            throw OutOfRangeException.because(
                    table.label(),
                    "%s, line %d: “%s” has %s, must have %d with a semicolon between them: %s"
                            .formatted(table.label(), line, typed.strip(), values(found), wanted, columns()));
        }
    }

    private static String values(int found) {
        return found == 1 ? "one value" : found + " values";
    }

    private String columns() {
        return table.columns().stream().map(Input.Column::label).collect(Collectors.joining("; "));
    }
}
