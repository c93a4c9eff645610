package org.riseandgel.core.statistics;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.OutOfRangeException;

/** Correlation of two lists of numbers of the same length. */
public final class Correlation {
    private Correlation() {}

    /**
     * Pearson's r = Σ(x − x̄)(y − ȳ) ÷ √(Σ(x − x̄)²·Σ(y − ȳ)²), from −1 to 1; empty when either list does not vary, since
     * then nothing varies together.
     *
     * @throws OutOfRangeException when the lists differ in length, are empty, or hold what is no number
     */
    public static OptionalDouble pearson(List<Double> x, List<Double> y) {
        if (x.size() != y.size() || x.isEmpty()) {
            throw OutOfRangeException.because(
                    "lists",
                    "lists have %d and %d numbers, must be equally many, 1 or more".formatted(x.size(), y.size()));
        }
        double[] fromMeanX = centred(x);
        double[] fromMeanY = centred(y);
        double squares = product(fromMeanX, fromMeanX) * product(fromMeanY, fromMeanY);
        return squares > 0
                ? OptionalDouble.of(Math.max(-1, Math.min(1, product(fromMeanX, fromMeanY) / StrictMath.sqrt(squares))))
                : OptionalDouble.empty();
    }

    /** The point-biserial correlation: Pearson's r of right (1) or wrong (0) with a score. */
    public static OptionalDouble pointBiserial(List<Boolean> right, List<Double> score) {
        return pearson(right.stream().map(is -> is ? 1.0 : 0.0).toList(), score);
    }

    private static double[] centred(List<Double> values) {
        double[] plain = values.stream()
                .mapToDouble(value -> Checks.finite("value", value))
                .toArray();
        double mean = CompensatedSum.of(plain) / plain.length;
        return IntStream.range(0, plain.length)
                .mapToDouble(i -> plain[i] - mean)
                .toArray();
    }

    private static double product(double[] x, double[] y) {
        CompensatedSum sum = new CompensatedSum();
        for (int i = 0; i < x.length; i++) {
            sum.add(x[i] * y[i]);
        }
        return sum.total();
    }
}
