package org.riseandgel.bench;

import org.riseandgel.core.quantity.Quantity;

/** Whether two values differ by more than the rounding of a computer. */
final class Sameness {
    private static final double HAIR = 1e-9;

    private Sameness() {}

    static boolean same(Quantity one, Quantity other) {
        if (one.kind() != other.kind()) {
            return false;
        }
        double size = Math.max(Math.abs(one.inBase()), Math.abs(other.inBase()));
        return Math.abs(one.inBase() - other.inBase()) <= HAIR * size;
    }
}
