package org.riseandgel.core.vessel;

import org.riseandgel.core.quantity.Area;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Volume;

/** The arithmetic of upright walls: floor area A = π·r², volume V = A·h, height h = V ÷ A. */
public final class Cylinder {
    private static final double CUBIC_MILLIMETRES_PER_MILLILITRE = 1000;

    private Cylinder() {}

    /** Half the diameter. */
    public static Length radius(Length diameter) {
        return Length.ofMillimetres(diameter.inMillimetres() / 2);
    }

    /** The area of a round floor, A = π·r², for a radius of zero or more. */
    public static Area floorArea(Length radius) {
        return Area.ofSquareMillimetres(Math.PI * radius.inMillimetres() * radius.inMillimetres());
    }

    /** The volume over a floor up to a height, V = A·h. */
    public static Volume volume(Area floor, Length height) {
        return Volume.ofMillilitres(
                floor.inSquareMillimetres() * height.inMillimetres() / CUBIC_MILLIMETRES_PER_MILLILITRE);
    }

    /**
     * The height at which a volume stands over a floor, h = V ÷ A. It knows no rim.
     *
     * @throws org.riseandgel.core.quantity.OutOfRangeException when the floor has no area
     */
    public static Length height(Volume volume, Area floor) {
        double area = Checks.positive("floor area in square millimetres", floor.inSquareMillimetres());
        return Length.ofMillimetres(volume.inMillilitres() * CUBIC_MILLIMETRES_PER_MILLILITRE / area);
    }
}
