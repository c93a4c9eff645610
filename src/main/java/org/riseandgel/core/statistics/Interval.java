package org.riseandgel.core.statistics;

import org.riseandgel.core.quantity.Checks;

/** From low to high, both included, holding what is sought with a probability of more than 0 and less than 1. */
public record Interval(double low, double high, double probability) {
    public Interval {
        Checks.finite("high end", high);
        Checks.inRange("low end", low, -Checks.LARGEST, high);
        Probabilities.inside(probability);
    }

    /** The middle ± a reach of zero or more. */
    public static Interval around(double middle, double reach, double probability) {
        return new Interval(middle - reach, middle + reach, probability);
    }

    /** Whether the value lies in it, ends included. */
    public boolean contains(double value) {
        return value >= low && value <= high;
    }

    /** High end − low end. */
    public double width() {
        return high - low;
    }
}
