package org.riseandgel.core.statistics;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.OutOfRangeException;

/** Who had which item right: one row for each person, the items in the same order in every row. */
public record ScoreTable(List<List<Boolean>> rows) {
    /** @throws OutOfRangeException when there are no people or no items, or rows differ in length */
    public ScoreTable {
        rows = rows.stream().map(List::copyOf).toList();
        int items = rows.isEmpty() ? 0 : rows.get(0).size();
        if (items == 0) {
            throw OutOfRangeException.because("table", "table is empty, must have 1 person and 1 item or more");
        }
        for (List<Boolean> row : rows) {
            if (row.size() != items) {
                throw OutOfRangeException.because(
                        "table", "a row has %d items, must have %d as the first".formatted(row.size(), items));
            }
        }
    }

    /** How many items there are. */
    public int items() {
        return rows.get(0).size();
    }

    /** The facility of an item, counted from 0: the share of people who had it right. */
    public double facility(int item) {
        return answers(item).stream().filter(right -> right).count() / (double) rows.size();
    }

    /** Each person's number right. */
    public List<Integer> totals() {
        return rows.stream()
                .map(row -> (int) row.stream().filter(right -> right).count())
                .toList();
    }

    /**
     * The corrected item-rest correlation: point-biserial of the item with the total of the other items, so that the item
     * is not correlated with itself. Empty when everybody had it alike, or the rest does not vary.
     */
    public OptionalDouble itemRest(int item) {
        List<Boolean> answers = answers(item);
        List<Integer> totals = totals();
        List<Double> rest = IntStream.range(0, rows.size())
                .mapToObj(i -> (double) totals.get(i) - (answers.get(i) ? 1 : 0))
                .toList();
        return Correlation.pointBiserial(answers, rest);
    }

    /**
     * Kuder and Richardson's formula 20: k ÷ (k − 1)·(1 − Σp·q ÷ σ²), k items, p the facility of each, q = 1 − p, σ² the
     * variance of the totals over all n people, divided by n. Since p·q is a variance divided by n, so must σ² be:
     * dividing by n − 1 instead, as some spreadsheets do, mixes two kinds and comes out too high. Empty with one item, or
     * when all totals are alike. Source: G. F. Kuder and M. W. Richardson, Psychometrika 2, 1937.
     */
    public OptionalDouble kr20() {
        double variance = totalVariance();
        if (items() < 2 || !(variance > 0)) {
            return OptionalDouble.empty();
        }
        double k = items();
        return OptionalDouble.of(k / (k - 1) * (1 - itemVariance() / variance));
    }

    /** Σp·q over the items. */
    public double itemVariance() {
        return IntStream.range(0, items())
                .mapToDouble(item -> facility(item) * (1 - facility(item)))
                .sum();
    }

    /** The variance of the totals, divided by the number of people. */
    public double totalVariance() {
        double mean = totals().stream().mapToInt(Integer::intValue).sum() / (double) rows.size();
        return totals().stream()
                        .mapToDouble(total -> (total - mean) * (total - mean))
                        .sum()
                / rows.size();
    }

    private List<Boolean> answers(int item) {
        int checked = (int) Checks.inRange("item", item, 0, items() - 1.0);
        return rows.stream().map(row -> row.get(checked)).toList();
    }
}
