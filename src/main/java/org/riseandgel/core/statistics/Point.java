package org.riseandgel.core.statistics;

import org.riseandgel.core.quantity.Checks;

/** A reading y at a place x, both ordinary numbers. */
public record Point(double x, double y) {
    public Point {
        Checks.finite("x", x);
        Checks.finite("y", y);
    }
}
