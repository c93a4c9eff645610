package org.riseandgel.core.vessel;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Volume;

/**
 * A round vessel whose wall leans evenly, out or in; see {@link Frustum} for the formulas. Diameters and depth are more
 * than zero, and the wider end is at most 1,000 times the narrower, so that the inverse stays good to 1 part in 10⁹.
 */
public record TaperedVessel(Length bottomDiameter, Length topDiameter, Length depth) implements Vessel {
    private static final double LARGEST_TAPER = 1000;

    public TaperedVessel {
        double bottom = Checks.positive("inside bottom diameter in millimetres", bottomDiameter.inMillimetres());
        double top = Checks.positive("inside top diameter in millimetres", topDiameter.inMillimetres());
        Checks.positive("inside depth in millimetres", depth.inMillimetres());
        if (Math.max(bottom, top) > LARGEST_TAPER * Math.min(bottom, top)) {
            throw OutOfRangeException.because(
                    "taper",
                    "diameters are %s mm and %s mm, the wider must be at most %s times the narrower"
                            .formatted(bottom, top, LARGEST_TAPER));
        }
    }

    @Override
    public Volume capacity() {
        return Frustum.volume(floorRadius(), rimRadius(), depth);
    }

    @Override
    public Volume volumeAt(Length height) {
        Volume volume = Frustum.volume(floorRadius(), Cylinder.radius(diameterAt(height)), height);
        return Bounds.atMost(capacity(), volume);
    }

    @Override
    public Length heightOf(Volume volume) {
        Length levelRadius = Frustum.levelRadius(floorRadius(), rimRadius(), depth, Bounds.within(this, volume));
        return Bounds.atMost(depth, Frustum.height(volume, floorRadius(), levelRadius));
    }

    /** The inside diameter at a height, from the floor to the rim. */
    public Length diameterAt(Length height) {
        double share = Bounds.within(this, height).inMillimetres() / depth.inMillimetres();
        return Length.ofMillimetres((1 - share) * bottomDiameter.inMillimetres() + share * topDiameter.inMillimetres());
    }

    private Length floorRadius() {
        return Cylinder.radius(bottomDiameter);
    }

    private Length rimRadius() {
        return Cylinder.radius(topDiameter);
    }
}
