package org.riseandgel.core.vessel;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Volume;

/** What lies within a vessel. */
final class Bounds {
    private Bounds() {}

    static Length within(Vessel vessel, Length height) {
        Checks.inRange(
                "height in millimetres",
                height.inMillimetres(),
                0,
                vessel.depth().inMillimetres());
        return height;
    }

    static Volume within(Vessel vessel, Volume volume) {
        Checks.inRange(
                "volume in millilitres",
                volume.inMillilitres(),
                0,
                vessel.capacity().inMillilitres());
        return volume;
    }

    /** Rounding may put the height of the very capacity a hair above the rim. */
    static Length atMost(Length rim, Length height) {
        return height.inMillimetres() > rim.inMillimetres() ? rim : height;
    }

    /** Rounding may put the volume just below the rim a hair above the capacity. */
    static Volume atMost(Volume capacity, Volume volume) {
        return volume.inMillilitres() > capacity.inMillilitres() ? capacity : volume;
    }
}
