package org.riseandgel.core.vessel;

import org.riseandgel.core.quantity.Area;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Volume;

/** A round vessel with an upright wall: V = π·r²·h and h = V ÷ (π·r²). Diameter and depth are more than zero. */
public record StraightVessel(Length diameter, Length depth) implements Vessel {
    public StraightVessel {
        Checks.positive("inside diameter in millimetres", diameter.inMillimetres());
        Checks.positive("inside depth in millimetres", depth.inMillimetres());
    }

    @Override
    public Volume capacity() {
        return Cylinder.volume(floor(), depth);
    }

    @Override
    public Volume volumeAt(Length height) {
        return Cylinder.volume(floor(), Bounds.within(this, height));
    }

    @Override
    public Length heightOf(Volume volume) {
        return Bounds.atMost(depth, Cylinder.height(Bounds.within(this, volume), floor()));
    }

    private Area floor() {
        return Cylinder.floorArea(Cylinder.radius(diameter));
    }
}
