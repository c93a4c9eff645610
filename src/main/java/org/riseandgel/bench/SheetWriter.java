package org.riseandgel.bench;

import io.quarkus.qute.RawString;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.riseandgel.core.quantity.Unit;

/** Writes an outcome out for people. */
final class SheetWriter {
    private final QuantityText text;
    private final QuantityText shown;

    /** A writer of the working and the fields, and of what comes out where that is shown in units of its own. */
    SheetWriter(QuantityText text, QuantityText shown) {
        this.text = text;
        this.shown = shown;
    }

    Sheet.Worked worked(Calculation calculation, Given given, Outcome outcome) {
        return new Sheet.Worked(
                lines(calculation, outcome),
                outcome.steps().stream().map(this::step).toList(),
                outcome.tables().stream().map(this::table).toList(),
                outcome.notes().stream()
                        .map(note -> shown.fill(note.text(), note.in()))
                        .toList(),
                calculation.drawing(given, outcome, shown).map(RawString::new).orElse(null));
    }

    /** Findings in words first; what could not be told is left out, a note says why. */
    private List<Sheet.Line> lines(Calculation calculation, Outcome outcome) {
        Stream<Sheet.Line> found = calculation.findings().stream()
                .filter(finding -> outcome.findings().containsKey(finding.name()))
                .map(finding ->
                        new Sheet.Line(finding.label(), outcome.findings().get(finding.name()), true));
        Stream<Sheet.Line> worked = calculation.results().stream()
                .filter(result -> outcome.results().containsKey(result.name()))
                .map(result -> line(result, outcome));
        return Stream.concat(found, worked).toList();
    }

    private Sheet.Line line(Result result, Outcome outcome) {
        Unit unit = outcome.units().get(result.name());
        return new Sheet.Line(
                result.label(),
                shown.toReadability(outcome.results().get(result.name()), unit, result.readability()),
                false);
    }

    private Sheet.Step step(Outcome.Step step) {
        return new Sheet.Step(
                step.label(), step.formula(), text.fill(step.numbers(), step.in()), text.of(step.value(), step.unit()));
    }

    private Sheet.Table table(Outcome.Table table) {
        return new Sheet.Table(
                table.caption(),
                IntStream.range(0, table.headings().size())
                        .mapToObj(column -> heading(table, column))
                        .toList(),
                table.rows().stream()
                        .map(row -> row.stream().map(this::cell).toList())
                        .toList());
    }

    private static Sheet.Cell heading(Outcome.Table table, int column) {
        boolean numbers = column > 0
                && table.rows().stream().allMatch(row -> row.get(column).quantity() != null);
        return new Sheet.Cell(table.headings().get(column), numbers);
    }

    private Sheet.Cell cell(Outcome.Cell cell) {
        if (cell.quantity() == null) {
            return new Sheet.Cell(cell.words(), false);
        }
        String sign = cell.unit() == Unit.ONE ? "×" : "";
        return new Sheet.Cell(shown.toReadability(cell.quantity(), cell.unit(), cell.readability()) + sign, true);
    }

    /** The field of an input, with what was typed or else its default. */
    Sheet.Field field(Input input, String typed) {
        if (input instanceof Input.Measured measured) {
            return new Sheet.Field(
                    input.name(),
                    input.label(),
                    input.help(),
                    typed,
                    measured.unit().symbol(),
                    null,
                    false,
                    false);
        }
        List<Input.Option> options = input instanceof Input.Choice choice ? choice.options() : null;
        return new Sheet.Field(
                input.name(),
                input.label(),
                input.help(),
                typed,
                "",
                options,
                input instanceof Input.Readings,
                input instanceof Input.Mesh);
    }

    /** The default as somebody would type it; empty where there is none. */
    String byDefault(Input input) {
        if (input instanceof Input.Measured measured) {
            return measured.byDefault() == null ? "" : text.number(measured.defaultQuantity(), measured.unit());
        }
        if (input instanceof Input.Anything anything) {
            return text.of(anything.defaultQuantity(), anything.defaultUnit());
        }
        if (input instanceof Input.Readings table) {
            return table.exampleRows().stream()
                    .map(row -> ReadingLines.written(table, row, text))
                    .collect(Collectors.joining("\n"));
        }
        if (input instanceof Input.Mesh) {
            return "";
        }
        return ((Input.Choice) input).options().get(0).value();
    }
}
