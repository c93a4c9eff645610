package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.MINUTE;
import static org.riseandgel.core.quantity.Unit.ONE;
import static org.riseandgel.core.quantity.Unit.PERCENT;
import static org.riseandgel.core.quantity.Unit.PER_MINUTE;

import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Rate;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.rise.RiseCurve;
import org.riseandgel.core.rise.RiseForecast;
import org.riseandgel.core.statistics.Estimate;

/** The steps from a fitted rise to the time of a wanted ratio. */
final class RiseWork {
    private final Given given;
    private final Work work;
    private final RiseCurve curve;
    private final double chance;
    private final Ratio wanted;

    RiseWork(Given given, Work work, RiseCurve curve) {
        this.given = given;
        this.work = work;
        this.curve = curve;
        chance = ForecastRise.chance(given);
        wanted = given.get(ForecastRise.WANTED, Ratio.class);
    }

    void write() {
        Work.In readings = number(Ratio.of(given.rows(ForecastRise.READINGS).size()));
        Ratio highest = work.step(
                ForecastRise.HIGHEST,
                "Ratio that the foam tends to, from the curve that fits the readings best",
                "R(t) = 1 + (Rmax − 1) × (1 − e^(−k × t)), least squares",
                "Rmax through {} readings",
                Ratio.of(curve.highest(chance).value()),
                ONE,
                readings);
        Rate rate = work.step(
                "rate",
                "How fast it gets there, from the same curve",
                "k of the same curve",
                "k through {} readings",
                rate(curve.ratePerMinute(chance).value()),
                PER_MINUTE,
                readings);
        work.result(ForecastRise.HIGHEST, highest);
        RiseForecast forecast = curve.timeTo(wanted, chance);
        if (forecast instanceof RiseForecast.Reached reached) {
            reached(reached, highest, rate);
        } else {
            beyond(((RiseForecast.BeyondHighest) forecast).highest());
        }
    }

    private void reached(RiseForecast.Reached reached, Ratio highest, Rate rate) {
        double share = (wanted.asNumber() - 1) / (highest.asNumber() - 1);
        TimeSpan time = work.step(
                ForecastRise.TIME,
                "Whipping time to the wanted ratio",
                "t = −ln(1 − (R − 1) ÷ (Rmax − 1)) ÷ k",
                "−ln(1 − ({} − 1) ÷ ({} − 1)) ÷ {}",
                TimeSpan.ofMinutes(-StrictMath.log1p(-share) / rate.in(PER_MINUTE)),
                MINUTE,
                number(wanted),
                number(highest),
                Work.In.of(rate, PER_MINUTE));
        work.result(ForecastRise.TIME, time);
        TimeSpan earliest =
                bound(ForecastRise.EARLIEST, "Earliest: a reading may be that high from then on", reached.earliest());
        work.result(ForecastRise.EARLIEST, earliest);
        reached.latest()
                .ifPresentOrElse(
                        latest -> work.result(
                                ForecastRise.LATEST,
                                bound(ForecastRise.LATEST, "Latest: by then it is that high even at worst", latest)),
                        () -> work.note("There is no latest time: the wanted ratio is so near the highest that it may"
                                + " never be read. Want a little less."));
        slips(highest, rate);
    }

    private TimeSpan bound(String id, String label, TimeSpan time) {
        return work.step(
                id,
                label,
                "R(t) ± the scatter of a reading and the error of the curve",
                "for a chance of {}",
                time,
                MINUTE,
                Work.In.of(given.get(ForecastRise.CHANCE, Concentration.class), PERCENT));
    }

    private void beyond(Estimate highest) {
        work.note(
                "This foam does not get to {}: it tends to {}, and whipping on only makes it coarse. Want less, or change"
                        + " the formula.",
                number(wanted),
                number(Ratio.of(highest.value())));
    }

    private void slips(Ratio highest, Rate rate) {
        double share = wanted.asNumber() / highest.asNumber();
        work.slip(
                Slip.GAIN_FOR_RATIO,
                ForecastRise.TIME,
                () -> TimeSpan.ofMinutes(-StrictMath.log1p(-share) / rate.in(PER_MINUTE)),
                "The foam starts at a ratio of 1, so the rise is the ratio less 1.");
    }

    private static Rate rate(double perMinute) {
        return (Rate) Quantity.of(perMinute, PER_MINUTE);
    }

    private static Work.In number(Ratio ratio) {
        return Work.In.of(ratio, ONE);
    }
}
