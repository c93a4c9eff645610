package org.riseandgel.exercise;

import org.riseandgel.core.quantity.Rational;

/** The values from low to high, both included, around a centre; exact. */
public record Band(Rational low, Rational centre, Rational high) {
    /** The values at most a half width away from a centre. */
    public static Band around(Rational centre, Rational halfWidth) {
        return new Band(centre.minus(halfWidth), centre, centre.plus(halfWidth));
    }

    /** Whether the value lies in it; its ends do. */
    public boolean contains(Rational value) {
        return low.compareTo(value) <= 0 && value.compareTo(high) <= 0;
    }

    /** Whether no value lies in both. */
    public boolean apartFrom(Band other) {
        return high.compareTo(other.low) < 0 || other.high.compareTo(low) < 0;
    }

    /** Half of high − low. */
    public Rational halfWidth() {
        return high.minus(centre);
    }

    /** How far a value is from the centre. */
    public Rational distance(Rational value) {
        return value.minus(centre).abs();
    }
}
