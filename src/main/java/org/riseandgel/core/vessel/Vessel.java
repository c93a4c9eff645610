package org.riseandgel.core.vessel;

import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Volume;

/**
 * A vessel to whip in, inside measures only. Heights are measured along the axis from the floor, where a volume stick
 * stands.
 */
public sealed interface Vessel permits StraightVessel, TaperedVessel, ProfiledVessel {
    /** From the floor to the rim. */
    Length depth();

    /** What it holds up to the rim. */
    Volume capacity();

    /**
     * What it holds up to a height, from 0 to the depth.
     *
     * @throws org.riseandgel.core.quantity.OutOfRangeException beyond the rim
     */
    Volume volumeAt(Length height);

    /**
     * The height at which a volume stands, from 0 to the capacity: the inverse of {@link #volumeAt}.
     *
     * @throws org.riseandgel.core.quantity.OutOfRangeException when it does not fit
     */
    Length heightOf(Volume volume);

    /**
     * The level of a liquid while something stays in it, whisk or paddle, that displaces a volume of its own and is
     * covered by the liquid: the height of volume + displaced.
     *
     * @throws org.riseandgel.core.quantity.OutOfRangeException when both together do not fit
     */
    default Length levelOf(Volume liquid, Volume displaced) {
        return heightOf(Volume.ofMillilitres(liquid.inMillilitres() + displaced.inMillilitres()));
    }

    /** What is left of the depth above the level of a liquid while something stays in it: depth − level. */
    default Length freeboard(Volume liquid, Volume displaced) {
        return Length.ofMillimetres(
                Math.max(0, depth().inMillimetres() - levelOf(liquid, displaced).inMillimetres()));
    }
}
