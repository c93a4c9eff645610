package org.riseandgel.bench.api;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Outcome;
import org.riseandgel.bench.QuantityText;
import org.riseandgel.bench.Result;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/** What a run gave, as the API tells it. */
@Schema(name = "Worked", description = "What came out, and how.")
public record WorkedView(
        String id,
        List<Value> results,
        @Schema(description = "What comes out in words, by name.") java.util.Map<String, String> findings,
        List<StepView> steps,
        List<TableView> tables,
        List<String> notes,
        List<String> cautions) {

    /** A result: its value in full, and as it would be read from the instrument. */
    @Schema(name = "Result")
    public record Value(
            @Schema(examples = "markHeight") String name,
            String label,
            @Schema(description = "In that unit, unrounded.") double value,
            @Schema(description = "The code of the unit.", examples = "cm") String unit,
            @Schema(description = "Rounded, with its unit, in the school's decimal mark.", examples = "17.7 cm")
                    String text) {}

    /** A line of the working. */
    @Schema(name = "Step")
    public record StepView(
            String id,
            String label,
            @Schema(examples = "h = V ÷ A") String formula,
            @Schema(description = "The formula with the numbers in it.") String numbers,
            double value,
            String unit,
            String text) {}

    /** Results that belong together, written out. */
    @Schema(name = "Table")
    public record TableView(String caption, List<String> headings, List<List<String>> rows) {}

    static WorkedView of(Calculation calculation, Outcome outcome, QuantityText text) {
        return new WorkedView(
                calculation.id(),
                calculation.results().stream()
                        .filter(result -> outcome.results().containsKey(result.name()))
                        .map(result -> value(result, outcome, text))
                        .toList(),
                outcome.findings(),
                outcome.steps().stream().map(step -> step(step, text)).toList(),
                outcome.tables().stream().map(table -> table(table, text)).toList(),
                outcome.notes().stream()
                        .map(note -> text.fill(note.text(), note.in()))
                        .toList(),
                calculation.cautions());
    }

    private static Value value(Result result, Outcome outcome, QuantityText text) {
        Quantity quantity = outcome.results().get(result.name());
        Unit unit = outcome.units().get(result.name());
        return new Value(
                result.name(),
                result.label(),
                quantity.in(unit),
                unit.code(),
                text.toReadability(quantity, unit, result.readability()));
    }

    private static StepView step(Outcome.Step step, QuantityText text) {
        return new StepView(
                step.id(),
                step.label(),
                step.formula(),
                text.fill(step.numbers(), step.in()),
                step.value().in(step.unit()),
                step.unit().code(),
                text.of(step.value(), step.unit()));
    }

    private static TableView table(Outcome.Table table, QuantityText text) {
        return new TableView(
                table.caption(),
                table.headings(),
                table.rows().stream()
                        .map(row -> row.stream().map(cell -> cell(cell, text)).toList())
                        .toList());
    }

    private static String cell(Outcome.Cell cell, QuantityText text) {
        return cell.quantity() == null
                ? cell.words()
                : text.toReadability(cell.quantity(), cell.unit(), cell.readability());
    }
}
