package org.riseandgel.core.statistics;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.OutOfRangeException;

/**
 * What is known of the scatter of readings before they are looked at: a standard deviation s₀ and how many degrees of
 * freedom ν₀ it is worth. Pooled with a residual sum RSS on ν degrees of freedom it gives
 *
 * <p>s² = (ν₀·s₀² + RSS) ÷ (ν₀ + ν) on ν₀ + ν degrees of freedom,
 *
 * <p>the posterior of the variance under a scaled inverse χ² prior. Without it three readings that happen to lie on a
 * curve would pass for certainty.
 *
 * @param deviation s₀, in the unit of the readings, zero or more
 * @param worth ν₀, from 0 (only the readings count) to 10⁶
 */
public record ReadingNoise(double deviation, double worth) {
    private static final double MOST_WORTH = 1e6;

    /** Nothing is known beforehand: the classical estimate from the residuals alone. */
    public static final ReadingNoise UNKNOWN = new ReadingNoise(0, 0);

    public ReadingNoise {
        Checks.notNegative("standard deviation of a reading", deviation);
        Checks.inRange("worth in degrees of freedom", worth, 0, MOST_WORTH);
    }

    /** ν₀ + ν. */
    public double degreesOfFreedom(int residual) {
        return worth + residual;
    }

    /**
     * s = √((ν₀·s₀² + RSS) ÷ (ν₀ + ν)).
     *
     * @param residualSum RSS, zero or more
     * @param residual ν, zero or more
     * @throws OutOfRangeException when ν₀ + ν is zero, so that nothing tells the scatter
     */
    public double pooled(double residualSum, int residual) {
        double degrees = Checks.positive("degrees of freedom", degreesOfFreedom(residual));
        return StrictMath.sqrt(
                (worth * deviation * deviation + Checks.notNegative("residual sum", residualSum)) / degrees);
    }
}
