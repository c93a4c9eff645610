package org.riseandgel.core.statistics;

import java.util.List;

/**
 * The residual sum of y = b₀ + b₁·(1 − e^(−b₂·x)) as a function of b₂ alone, b₀ and b₁ being the best for it (variable
 * projection: G. H. Golub and V. Pereyra, SIAM Journal on Numerical Analysis 10, 1973; from memory).
 *
 * <p>The shape is taken as (1 − e^(−b₂·x)) ÷ (1 − e^(−b₂·X)), X being the last place, so that it tends to x ÷ X and not
 * to 0 ÷ 0 as b₂ → 0.
 */
final class ApproachProfile {
    private final double[] x;
    private final double[] y;
    private final boolean offset;
    private final double first;
    private final double last;

    /** The best linear parts for a rate: offset, rise at the last place, residual sum, and its slope's sign. */
    record Best(double rate, double offset, double riseAtLast, double residualSum, double steepness) {}

    ApproachProfile(List<Point> points, boolean offset) {
        x = points.stream().mapToDouble(Point::x).toArray();
        y = points.stream().mapToDouble(Point::y).toArray();
        this.offset = offset;
        last = points.stream().mapToDouble(Point::x).max().orElseThrow();
        first = points.stream()
                .mapToDouble(Point::x)
                .filter(place -> place > 0)
                .min()
                .orElse(last);
    }

    /** The smallest place above zero. */
    double first() {
        return first;
    }

    /** The largest place. */
    double last() {
        return last;
    }

    /** 1 − e^(−rate·X): what turns the rise at the last place into b₁. */
    double reached(double rate) {
        return -StrictMath.expm1(-rate * last);
    }

    Best at(double rate) {
        double[] shape = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            shape[i] = -StrictMath.expm1(-rate * x[i]) / reached(rate);
        }
        double middleShape = offset ? CompensatedSum.of(shape) / x.length : 0;
        double middleY = offset ? CompensatedSum.of(y) / x.length : 0;
        CompensatedSum across = new CompensatedSum();
        CompensatedSum square = new CompensatedSum();
        for (int i = 0; i < x.length; i++) {
            double centred = shape[i] - middleShape;
            across.add(centred * (y[i] - middleY));
            square.add(centred * centred);
        }
        double rise = square.total() > 0 ? across.total() / square.total() : 0;
        return best(rate, shape, offset ? middleY - rise * middleShape : 0, rise);
    }

    /** By the envelope theorem d(RSS)/d(ln b₂) = −2·b₁·b₂·Σ residual·x·e^(−b₂·x); its sign is all that is needed. */
    private Best best(double rate, double[] shape, double start, double rise) {
        CompensatedSum squares = new CompensatedSum();
        CompensatedSum pull = new CompensatedSum();
        for (int i = 0; i < x.length; i++) {
            double residual = y[i] - start - rise * shape[i];
            squares.add(residual * residual);
            pull.add(residual * x[i] / last * StrictMath.exp(-rate * (x[i] - first)));
        }
        return new Best(rate, start, rise, squares.total(), -rise * pull.total());
    }
}
