package org.riseandgel.core.statistics;

import java.util.List;
import org.riseandgel.core.quantity.OutOfRangeException;

/**
 * The straight line y = b₀ + b₁·x that fits readings best by least squares, and what can be said from it.
 *
 * <p>b₁ = Sxy ÷ Sxx, b₀ = ȳ − b₁·x̄, s² = Σ(y − b₀ − b₁·x)² ÷ (n − 2). Sums are taken about the means, so that large
 * values that vary little lose no digits. Source: JCGM 100:2008, H.3, and any textbook of regression.
 *
 * @param count n, the number of readings
 * @param intercept b₀, in the unit of y
 * @param slope b₁, in the unit of y over that of x
 * @param meanX x̄
 * @param spreadX Sxx = Σ(x − x̄)²
 * @param residualSum Σ(y − b₀ − b₁·x)²
 * @param totalSum Σ(y − ȳ)²
 */
public record StraightLineFit(
        int count, double intercept, double slope, double meanX, double spreadX, double residualSum, double totalSum) {
    private static final int FEWEST = 3;

    /**
     * Fits three or more readings at two or more different places.
     *
     * @throws OutOfRangeException when there are fewer
     */
    public static StraightLineFit of(List<Point> points) {
        if (points.size() < FEWEST) {
            throw OutOfRangeException.because(
                    "readings", "there are %d readings, must be 3 or more".formatted(points.size()));
        }
        double meanX = mean(points.stream().mapToDouble(Point::x).toArray());
        double meanY = mean(points.stream().mapToDouble(Point::y).toArray());
        CompensatedSum xx = new CompensatedSum();
        CompensatedSum xy = new CompensatedSum();
        CompensatedSum yy = new CompensatedSum();
        for (Point point : points) {
            double x = point.x() - meanX;
            double y = point.y() - meanY;
            xx.add(x * x);
            xy.add(x * y);
            yy.add(y * y);
        }
        if (!(xx.total() > 0)) {
            throw OutOfRangeException.because(
                    "readings", "all readings are at x = %s, must be at 2 or more places".formatted(meanX));
        }
        double slope = xy.total() / xx.total();
        double intercept = meanY - slope * meanX;
        return new StraightLineFit(
                points.size(), intercept, slope, meanX, xx.total(), residuals(points, meanX, meanY, slope), yy.total());
    }

    /** b₀ + b₁·x. */
    public double at(double x) {
        return intercept + slope * x;
    }

    /** n − 2. */
    public int degreesOfFreedom() {
        return count - 2;
    }

    /** s = √(Σ(y − b₀ − b₁·x)² ÷ (n − 2)), in the unit of y. */
    public double residualDeviation() {
        return StrictMath.sqrt(residualSum / degreesOfFreedom());
    }

    /** The standard error of b₀: s·√(1/n + x̄² ÷ Sxx). */
    public double interceptError() {
        return residualDeviation() * StrictMath.sqrt(distance(0));
    }

    /** The standard error of b₁: s ÷ √Sxx. */
    public double slopeError() {
        return residualDeviation() / StrictMath.sqrt(spreadX);
    }

    /** The correlation of b₀ and b₁: −x̄ ÷ √(Sxx/n + x̄²), from −1 to 1. */
    public double correlation() {
        return -meanX / StrictMath.sqrt(spreadX / count + meanX * meanX);
    }

    /** R² = 1 − residual sum ÷ total sum, from 0 to 1; 1 when y does not vary at all. */
    public double rSquared() {
        return totalSum > 0 ? 1 - residualSum / totalSum : 1;
    }

    /** Where the line itself is at x: standard error s·√(1/n + (x − x̄)² ÷ Sxx), n − 2 degrees of freedom. */
    public Estimate lineAt(double x, double probability) {
        double error = residualDeviation() * StrictMath.sqrt(distance(x));
        return Estimate.of(at(x), error, degreesOfFreedom(), probability);
    }

    /** Where one new reading at x will lie: standard error s·√(1 + 1/n + (x − x̄)² ÷ Sxx), n − 2 degrees of freedom. */
    public Estimate readingAt(double x, double probability) {
        double error = residualDeviation() * StrictMath.sqrt(1 + distance(x));
        return Estimate.of(at(x), error, degreesOfFreedom(), probability);
    }

    private double distance(double x) {
        return 1.0 / count + (x - meanX) * (x - meanX) / spreadX;
    }

    private static double residuals(List<Point> points, double meanX, double meanY, double slope) {
        CompensatedSum sum = new CompensatedSum();
        for (Point point : points) {
            double residual = point.y() - meanY - slope * (point.x() - meanX);
            sum.add(residual * residual);
        }
        return sum.total();
    }

    private static double mean(double[] values) {
        return CompensatedSum.of(values) / values.length;
    }
}
