package org.riseandgel.core.statistics;

import org.riseandgel.core.quantity.Checks;

/** A value that was estimated: the value, its standard error, and the Student interval around it. */
public record Estimate(double value, double standardError, Interval interval) {
    public Estimate {
        Checks.finite("estimate", value);
        Checks.notNegative("standard error", standardError);
    }

    /**
     * value ± q·standardError, q from Student's t.
     *
     * @param probability of the interval, more than 0 and less than 1
     * @param degreesOfFreedom on which the standard error rests, from 0.1 to 10⁹
     */
    public static Estimate of(double value, double standardError, double degreesOfFreedom, double probability) {
        double reach = Student.factor(probability, degreesOfFreedom) * standardError;
        return new Estimate(value, standardError, Interval.around(value, reach, probability));
    }
}
