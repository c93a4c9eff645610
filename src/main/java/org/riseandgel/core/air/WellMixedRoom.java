package org.riseandgel.core.air;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Volume;

/**
 * A room whose air is the same everywhere and is changed for clean air: C(t) = C₀·e^(−λ·t) + G ÷ (V·λ)·(1 − e^(−λ·t)).
 *
 * <p>C in mg/m³, G the release in mg/h, V the volume in m³, λ the air changes per hour. Without air change it is C₀ + G·t ÷ V.
 * Source: mass balance of one zone; the times to clear agree with the ventilation table of the CDC guideline of 1994 (MMWR
 * 43, table S3-1). A teaching estimate: no room mixes perfectly, and near the work there is more. It measures nothing and
 * clears nobody.
 *
 * @param volume more than zero
 * @param airChangesPerHour from 0 to 1,000
 */
public record WellMixedRoom(Volume volume, double airChangesPerHour) {
    private static final double MOST_CHANGES = 1000;
    private static final double LITRES_PER_CUBIC_METRE = 1000;

    public WellMixedRoom {
        Checks.positive("room volume in millilitres", volume.inMillilitres());
        Checks.inRange("air changes per hour", airChangesPerHour, 0, MOST_CHANGES);
    }

    /** From the flow of clean air in m³/h: air changes = flow ÷ volume. */
    public static WellMixedRoom withFlow(Volume volume, double cubicMetresPerHour) {
        double flow = Checks.notNegative("air flow in m³/h", cubicMetresPerHour);
        double room = Checks.positive("room volume in cubic metres", volume.inLitres() / LITRES_PER_CUBIC_METRE);
        return new WellMixedRoom(volume, flow / room);
    }

    /** After a time with a release going on, from what was there at the start. */
    public SaltInAir after(TimeSpan time, SaltInAir start, SaltRelease release) {
        double hours = time.inHours();
        double turned = airChangesPerHour * hours;
        return new SaltInAir(start.inMilligramsPerCubicMetre() * StrictMath.exp(-turned)
                + release.milligramsPerHour() / cubicMetres() * hours * meanShare(turned));
    }

    /** After a time without any release: C₀·e^(−λ·t). */
    public SaltInAir decayed(TimeSpan time, SaltInAir start) {
        return new SaltInAir(start.inMilligramsPerCubicMetre() * StrictMath.exp(-airChangesPerHour * time.inHours()));
    }

    /**
     * What a release that never ends tends to: G ÷ (V·λ).
     *
     * @throws OutOfRangeException when the air is not changed, since then it never settles
     */
    public SaltInAir settled(SaltRelease release) {
        return new SaltInAir(release.milligramsPerHour() / cubicMetres() / changes());
    }

    /**
     * The time until a share of what is in the air is gone, without any release: −ln(1 − share) ÷ λ.
     *
     * @param share from 0 to less than 1: 0.99 for 99 %
     * @throws OutOfRangeException outside, or when the air is not changed
     */
    public TimeSpan timeToRemove(double share) {
        Checks.inRange("share removed", share, 0, Math.nextDown(1.0));
        return TimeSpan.ofHours(-StrictMath.log1p(-share) / changes());
    }

    private double changes() {
        return Checks.positive("air changes per hour", airChangesPerHour);
    }

    private double cubicMetres() {
        return volume.inLitres() / LITRES_PER_CUBIC_METRE;
    }

    /** (1 − e^(−u)) ÷ u, which is 1 at u = 0: the release is spread over all ages from 0 to t. */
    private static double meanShare(double u) {
        return u == 0 ? 1 : -StrictMath.expm1(-u) / u;
    }
}
