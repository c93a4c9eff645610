package org.riseandgel.core.statistics;

import org.hipparchus.distribution.continuous.TDistribution;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.OutOfRangeException;

/** Student's t distribution, as far as intervals need it. The degrees of freedom need not be whole. */
public final class Student {
    private static final double FEWEST = 0.1;
    private static final double MOST = 1e9;

    private Student() {}

    /**
     * The factor q with P(|t| ≤ q) = probability: a two-sided interval reaches q standard errors either way.
     *
     * @param probability more than 0 and less than 1; 0.95 for a 95 % interval
     * @param degreesOfFreedom from 0.1 to 10⁹
     * @throws OutOfRangeException outside these
     */
    public static double factor(double probability, double degreesOfFreedom) {
        return distribution(degreesOfFreedom).inverseCumulativeProbability((1 + Probabilities.inside(probability)) / 2);
    }

    /**
     * P(T ≤ t).
     *
     * @param t any ordinary number
     * @param degreesOfFreedom from 0.1 to 10⁹
     * @throws OutOfRangeException outside these
     */
    public static double below(double t, double degreesOfFreedom) {
        return distribution(degreesOfFreedom).cumulativeProbability(Checks.finite("t", t));
    }

    private static TDistribution distribution(double degreesOfFreedom) {
        return new TDistribution(Checks.inRange("degrees of freedom", degreesOfFreedom, FEWEST, MOST));
    }
}
