package org.riseandgel.core.drying;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;

/**
 * Bake time against thickness: t = t₁·(L ÷ L₁)². In diffusion the share of water left depends on D·t ÷ L² alone (see
 * {@link SlabDrying}), so twice as thick takes four times as long at the same temperature and for the same foam. Heating
 * the mold itself is left out.
 */
public final class ThicknessTime {
    private ThicknessTime() {}

    /** The time for a thickness, from one that is known; both thicknesses are more than zero. */
    public static TimeSpan scaled(TimeSpan known, Length knownThickness, Length thickness) {
        double times = Checks.positive("thickness in millimetres", thickness.inMillimetres())
                / Checks.positive("known thickness in millimetres", knownThickness.inMillimetres());
        return scaled(known, Ratio.of(times));
    }

    /** The time for a piece so many times as thick as the known one: t = t₁ × times². */
    public static TimeSpan scaled(TimeSpan known, Ratio timesAsThick) {
        return TimeSpan.ofSeconds(known.inSeconds() * timesAsThick.asNumber() * timesAsThick.asNumber());
    }

    /** The thickness that a time dries, the inverse: L = L₁·√(t ÷ t₁), the known time being more than zero. */
    public static Length thicknessFor(TimeSpan time, TimeSpan known, Length knownThickness) {
        return thicknessFor(
                Ratio.of(time.inSeconds() / Checks.positive("known time in seconds", known.inSeconds())),
                knownThickness);
    }

    /** The thickness that dries in so many times the known time: L = L₁ × √times. */
    public static Length thicknessFor(Ratio timesAsLong, Length knownThickness) {
        return Length.ofMillimetres(knownThickness.inMillimetres() * StrictMath.sqrt(timesAsLong.asNumber()));
    }
}
