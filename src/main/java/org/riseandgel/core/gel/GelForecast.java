package org.riseandgel.core.gel;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.TimeSpan;

/** When a batch will gel after the agent is added: between low and high with the probability, half by the median. */
public record GelForecast(TimeSpan low, TimeSpan median, TimeSpan high, double probability) {
    public GelForecast {
        Checks.inRange("median in seconds", median.inSeconds(), low.inSeconds(), high.inSeconds());
    }
}
