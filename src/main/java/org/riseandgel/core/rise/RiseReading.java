package org.riseandgel.core.rise;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;

/** One reading of the volume stick: the whipping time so far, and the expansion ratio, from 0.5 to 100. */
public record RiseReading(TimeSpan whipped, Ratio ratio) {
    private static final double LOWEST = 0.5;
    private static final double HIGHEST = 100;

    public RiseReading {
        Checks.inRange("expansion ratio", ratio.asNumber(), LOWEST, HIGHEST);
    }
}
