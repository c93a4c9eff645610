package org.riseandgel.core.air;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.TimeSpan;

/** Salt dust getting into the air evenly: so much over a time of more than zero. */
public record SaltRelease(SaltMass dust, TimeSpan over) {
    public SaltRelease {
        Checks.positive("time of release in seconds", over.inSeconds());
    }

    /** dust ÷ time, in mg/h. */
    public double milligramsPerHour() {
        return dust.inMilligrams() / over.inHours();
    }
}
