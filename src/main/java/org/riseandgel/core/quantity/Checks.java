package org.riseandgel.core.quantity;

/** Refusals with one voice: what, the value, and the interval it must lie in. NaN and infinities never pass. */
public final class Checks {
    /** Largest magnitude any quantity may have, in its base unit. */
    public static final double LARGEST = 1e12;

    private Checks() {}

    /** The value, if it is a number of ordinary size. */
    public static double finite(String what, double value) {
        return inRange(what, value, -LARGEST, LARGEST);
    }

    /** The value, if low ≤ value ≤ high. */
    public static double inRange(String what, double value, double low, double high) {
        if (value >= low && value <= high) {
            return value;
        }
        throw new OutOfRangeException(what, "%s is %s, must be from %s to %s".formatted(what, value, low, high));
    }

    /** The value, if it is zero or more. */
    public static double notNegative(String what, double value) {
        return inRange(what, value, 0, LARGEST);
    }

    /** The value, if it is more than zero. */
    public static double positive(String what, double value) {
        if (value > 0 && value <= LARGEST) {
            return value;
        }
        throw new OutOfRangeException(
                what, "%s is %s, must be more than 0 and at most %s".formatted(what, value, LARGEST));
    }
}
