package org.riseandgel.core.batch;

import java.util.List;
import java.util.Map;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;

/** What is on the shelf, by the names of a formula's ingredients. */
public record Stock(Map<String, Mass> masses) {
    /** Two ingredients that run out within this share of each other run out together. */
    private static final double TOGETHER = 1e-9;

    public Stock {
        masses = Map.copyOf(masses);
    }

    /** The largest batch, and which ingredients it uses up; more than one when they run out together. */
    public record Most(Batch batch, List<String> limiting) {
        public Most {
            limiting = List.copyOf(limiting);
        }
    }

    /**
     * The most of a formula that the stock allows: base = min(stock ÷ (php ÷ 100)) over the ingredients it needs.
     *
     * @throws OutOfRangeException when an ingredient is not in stock, naming it
     */
    public Most most(Formula formula) {
        List<Formula.Row> needed = formula.rows().stream()
                .filter(row -> row.php().inPartsPerHundred() > 0)
                .toList();
        double base = needed.stream().mapToDouble(this::baseFor).min().orElseThrow();
        List<String> limiting = needed.stream()
                .filter(row -> baseFor(row) <= base * (1 + TOGETHER))
                .map(Formula.Row::ingredient)
                .toList();
        return new Most(Batch.ofBase(formula, Mass.ofGrams(base)), limiting);
    }

    private double baseFor(Formula.Row row) {
        Mass mass = masses.getOrDefault(row.ingredient(), Mass.ofGrams(0));
        Checks.positive("stock of " + row.ingredient() + " in grams", mass.inGrams());
        return Batch.baseFor(mass, row.php()).inGrams();
    }
}
