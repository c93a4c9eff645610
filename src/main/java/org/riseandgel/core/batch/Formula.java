package org.riseandgel.core.batch;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Php;

/** What goes into a batch, in parts per hundred of base by mass. Exactly one row is the base, at 100 php. */
public record Formula(List<Row> rows) {
    private static final double BASE_PHP = 100;
    private static final double MOST_PHP = 1000;

    /**
     * One ingredient: its php from 0 to 1,000, and the range in which the formula still works. A php outside its own
     * range is no error here: the weighing plan says so.
     */
    public record Row(String ingredient, Php php, Php low, Php high, boolean base) {
        public Row {
            if (ingredient.isBlank()) {
                throw OutOfRangeException.because("ingredient", "ingredient has no name, must have one");
            }
            Checks.inRange("php of " + ingredient, php.inPartsPerHundred(), 0, MOST_PHP);
            Checks.inRange("lowest php of " + ingredient, low.inPartsPerHundred(), 0, high.inPartsPerHundred());
        }

        /** The base: 100 php by definition. */
        public static Row base(String ingredient) {
            Php hundred = Php.ofPartsPerHundred(BASE_PHP);
            return new Row(ingredient, hundred, hundred, hundred, true);
        }

        /** An ingredient with the range in which it works. */
        public static Row ranged(String ingredient, Php php, Php low, Php high) {
            return new Row(ingredient, php, low, high, false);
        }

        /** An ingredient for which no range is known. */
        public static Row free(String ingredient, Php php) {
            return ranged(ingredient, php, Php.ofPartsPerHundred(0), Php.ofPartsPerHundred(MOST_PHP));
        }

        /** Whether a range is known. */
        public boolean hasRange() {
            return high.inPartsPerHundred() < MOST_PHP;
        }

        /** The same ingredient at another php. */
        public Row at(Php other) {
            return new Row(ingredient, other, low, high, base);
        }
    }

    public Formula {
        rows = List.copyOf(rows);
        requireOneBase(rows);
        requireDifferentNames(rows);
    }

    /**
     * The formula that the workshop starts from: base 150 g, foaming agent 15 g, water 5 g, gelling agent 16.5 g in a
     * range of 15 to 18 g per 150 g of base, weighed as the dispersion that it comes in. Common practice, no source.
     */
    public static Formula usual() {
        return new Formula(List.of(
                Row.base("Base"),
                Row.free("Foaming agent", Php.ofPartsPerHundred(10)),
                Row.free("Water", Php.ofPartsPerHundred(10.0 / 3)),
                Row.ranged(
                        "Gelling agent",
                        Php.ofPartsPerHundred(11),
                        Php.ofPartsPerHundred(10),
                        Php.ofPartsPerHundred(12))));
    }

    /** Σphp: the parts of the whole batch for a hundred parts of base. */
    public Php sum() {
        return Php.ofPartsPerHundred(
                rows.stream().mapToDouble(row -> row.php().inPartsPerHundred()).sum());
    }

    /** The row of an ingredient. */
    public Row row(String ingredient) {
        return rows.stream()
                .filter(row -> row.ingredient().equals(ingredient))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no ingredient named " + ingredient));
    }

    private static void requireOneBase(List<Row> rows) {
        List<Row> bases = rows.stream().filter(Row::base).toList();
        if (bases.size() != 1) {
            throw OutOfRangeException.because(
                    "formula", "formula has %d base rows, must have exactly 1".formatted(bases.size()));
        }
        double php = bases.get(0).php().inPartsPerHundred();
        if (php != BASE_PHP) {
            throw OutOfRangeException.because("formula", "base is %s php, must be 100 php".formatted(php));
        }
    }

    private static void requireDifferentNames(List<Row> rows) {
        Set<String> seen = new HashSet<>();
        for (Row row : rows) {
            if (!seen.add(row.ingredient())) {
                throw OutOfRangeException.because(
                        "formula", "formula names %s twice, must name it once".formatted(row.ingredient()));
            }
        }
    }
}
