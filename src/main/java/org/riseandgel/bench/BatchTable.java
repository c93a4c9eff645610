package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.PHP;

import java.util.List;
import org.riseandgel.core.batch.WeighingPlan;

/** The table to weigh by. */
final class BatchTable {
    private static final double PHP_STEP = 0.01;

    private BatchTable() {}

    static Outcome.Table of(WeighingPlan plan) {
        return new Outcome.Table(
                "To weigh, in this order",
                List.of("Ingredient", "Exact", "To weigh", "That is", "In range", "Uncertainty"),
                plan.rows().stream()
                        .map(row -> row(row, plan.readability().inGrams()))
                        .toList());
    }

    private static List<Outcome.Cell> row(WeighingPlan.Weighing row, double readability) {
        return List.of(
                Outcome.Cell.of(row.row().ingredient()),
                Outcome.Cell.of(row.exact(), GRAM, 0),
                Outcome.Cell.of(row.toWeigh(), GRAM, readability),
                Outcome.Cell.of(row.real(), PHP, PHP_STEP),
                Outcome.Cell.of(range(row)),
                Outcome.Cell.of(row.massUncertainty(), GRAM, readability / 10));
    }

    private static String range(WeighingPlan.Weighing row) {
        if (!row.row().hasRange()) {
            return "not set";
        }
        return row.inRange() ? "yes" : "no";
    }
}
