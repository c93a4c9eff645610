package org.riseandgel.core.rise;

import java.util.Optional;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.statistics.Estimate;

/** When a wanted ratio will be reached, or that it will not. */
public sealed interface RiseForecast {

    /**
     * From earliest to latest with the probability; there is no latest when it may also never be read, being too close to
     * Rmax.
     */
    record Reached(TimeSpan earliest, TimeSpan middle, Optional<TimeSpan> latest, double probability)
            implements RiseForecast {}

    /** The wanted ratio is at or beyond the highest the foam tends to. */
    record BeyondHighest(Ratio wanted, Estimate highest) implements RiseForecast {}
}
