package org.riseandgel.core.vessel;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Volume;

/**
 * The arithmetic of a round wall that leans: a cone with its tip cut off.
 *
 * <p>V = π·h·(r₀² + r₀·r + r²) ÷ 3, where r₀ is the radius of the floor, r that of the level, h the height between them.
 * The formula is in every handbook of solid geometry.
 */
public final class Frustum {
    private static final double CUBIC_MILLIMETRES_PER_MILLILITRE = 1000;

    private Frustum() {}

    /** The volume between a floor and a level, V = π·h·(r₀² + r₀·r + r²) ÷ 3. */
    public static Volume volume(Length floorRadius, Length levelRadius, Length height) {
        double cubicMillimetres = Math.PI * height.inMillimetres() * squares(floorRadius, levelRadius) / 3;
        return Volume.ofMillilitres(cubicMillimetres / CUBIC_MILLIMETRES_PER_MILLILITRE);
    }

    /**
     * The radius of the level at which a volume stands, r³ = r₀³ + 3·s·V ÷ π with s = (r₁ − r₀) ÷ depth. The wall goes
     * on leaning above the rim: whoever has a rim checks it.
     *
     * @throws OutOfRangeException when the walls meet before the volume is reached, or the depth is zero
     */
    public static Length levelRadius(Length floorRadius, Length rimRadius, Length depth, Volume volume) {
        double floor = floorRadius.inMillimetres();
        double lean = (rimRadius.inMillimetres() - floor)
                / Checks.positive("inside depth in millimetres", depth.inMillimetres());
        double cube = floor * floor * floor + 3 * lean * cubicMillimetres(volume) / Math.PI;
        if (cube < 0) {
            throw OutOfRangeException.because(
                    "volume",
                    "volume is %s mL, more than fits before the walls meet".formatted(volume.inMillilitres()));
        }
        return Length.ofMillimetres(StrictMath.cbrt(cube));
    }

    /**
     * The height between a floor and a level that enclose a volume, h = 3·V ÷ (π·(r₀² + r₀·r + r²)).
     *
     * <p>It takes no difference of radii, so that it stays exact as the wall becomes upright, where it is V ÷ (π·r²).
     *
     * @throws OutOfRangeException when both radii are zero
     */
    public static Length height(Volume volume, Length floorRadius, Length levelRadius) {
        double squares =
                Checks.positive("sum of squared radii in square millimetres", squares(floorRadius, levelRadius));
        return Length.ofMillimetres(3 * cubicMillimetres(volume) / (Math.PI * squares));
    }

    private static double squares(Length floorRadius, Length levelRadius) {
        double floor = floorRadius.inMillimetres();
        double level = levelRadius.inMillimetres();
        return floor * floor + floor * level + level * level;
    }

    private static double cubicMillimetres(Volume volume) {
        return volume.inMillilitres() * CUBIC_MILLIMETRES_PER_MILLILITRE;
    }
}
