package org.riseandgel.core.drying;

import org.riseandgel.core.quantity.TimeSpan;

/** When a piece will be dry enough, counted as the weighings are, and within which times with the probability. */
public record DryingForecast(TimeSpan early, TimeSpan middle, TimeSpan late, double probability) {}
