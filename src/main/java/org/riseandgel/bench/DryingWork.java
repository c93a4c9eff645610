package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.HOUR;
import static org.riseandgel.core.quantity.Unit.ONE;
import static org.riseandgel.core.quantity.Unit.PERCENT;
import static org.riseandgel.core.quantity.Unit.PER_HOUR;

import org.riseandgel.core.batch.WeighingPlan;
import org.riseandgel.core.drying.DryingCurve;
import org.riseandgel.core.drying.DryingForecast;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Rate;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;

/** The steps from a fitted drying curve to the time that is left. */
final class DryingWork {
    private final Given given;
    private final Work work;
    private final DryingCurve curve;
    private final double chance;
    private final Concentration left;
    private final double last;

    DryingWork(Given given, Work work, DryingCurve curve) {
        this.given = given;
        this.work = work;
        this.curve = curve;
        chance = WeighPiece.chance(given);
        left = given.get(WeighPiece.WATER_LEFT, Concentration.class);
        last = WeighPiece.lastHours(given);
    }

    void write() {
        Work.In weighings = Work.In.of(Ratio.of(given.rows(WeighPiece.WEIGHINGS).size()), ONE);
        Mass dry = work.step(
                WeighPiece.DRY_MASS,
                "Mass when dry, from the curve that fits the weighings best",
                "m(t) = m∞ + (m₀ − m∞) × e^(−k × t), least squares",
                "m∞ through {} weighings",
                Mass.ofGrams(curve.dryGrams(chance).value()),
                GRAM,
                weighings);
        work.result(WeighPiece.DRY_MASS, dry);
        Rate rate = work.step(
                "rate",
                "How fast it dries, from the same curve",
                "k of the same curve",
                "k through {} weighings",
                Rate.ofPerHour(curve.ratePerHour(chance).value()),
                PER_HOUR,
                weighings);
        TimeSpan time = time(rate);
        DryingForecast forecast = curve.timeTo(left.asFraction(), chance);
        work.result(WeighPiece.TIME_LEFT, left(WeighPiece.TIME_LEFT, "Still to dry", time));
        work.result(WeighPiece.EARLIEST, left(WeighPiece.EARLIEST, "At the least", sinceFirst(forecast.early())));
        work.result(WeighPiece.LATEST, left(WeighPiece.LATEST, "At the most", sinceFirst(forecast.late())));
        slips(rate);
        remarks(sinceFirst(forecast.middle()));
    }

    private TimeSpan time(Rate rate) {
        return work.step(
                "time",
                "Drying time from the first weighing on",
                "t = ln(100 % ÷ share left) ÷ k",
                "ln({} ÷ {}) ÷ {}",
                TimeSpan.ofHours(-StrictMath.log(left.asFraction()) / rate.perHour()),
                HOUR,
                Work.In.of(Concentration.ofPercent(100), PERCENT),
                Work.In.of(left, PERCENT),
                Work.In.of(rate, PER_HOUR));
    }

    private TimeSpan left(String id, String label, TimeSpan time) {
        return work.step(
                id,
                label,
                "time from the first weighing − time to the last one, not below 0",
                "{} − {}",
                after(time.inHours()),
                HOUR,
                Work.In.of(time, HOUR),
                Work.In.of(TimeSpan.ofHours(last - first()), HOUR));
    }

    private void slips(Rate rate) {
        work.slip(
                Slip.START_FOR_END,
                WeighPiece.TIME_LEFT,
                () -> TimeSpan.ofHours(-StrictMath.log(left.asFraction()) / rate.perHour()),
                "The time counts from the first weighing: what has passed since then comes off.");
        work.slip(
                Slip.DRY_FOR_LEFT,
                WeighPiece.TIME_LEFT,
                () -> after(-StrictMath.log1p(-left.asFraction()) / rate.perHour()));
    }

    private void remarks(TimeSpan time) {
        if (time.inHours() <= last - first()) {
            work.note("The piece is as dry as you want it. Weigh once more to be sure that it stays so.");
        }
        work.note(
                "Water still in the piece at the last weighing: {}.",
                Work.In.of(readable(curve.waterAt(TimeSpan.ofHours(last))), GRAM));
        work.note("It holds for the oven as it is: a warmer or fuller oven dries otherwise.");
    }

    /** As the balance would show it. */
    private Mass readable(Mass mass) {
        return WeighingPlan.rounded(mass, given.get(WeighPiece.READABILITY, Mass.class));
    }

    private TimeSpan sinceFirst(TimeSpan time) {
        return TimeSpan.ofHours(time.inHours() - first());
    }

    private TimeSpan after(double hoursFromFirst) {
        return TimeSpan.ofHours(Math.max(0, hoursFromFirst - (last - first())));
    }

    private double first() {
        return given.rows(WeighPiece.WEIGHINGS).stream()
                .mapToDouble(row -> row.get(0, TimeSpan.class).inHours())
                .min()
                .orElseThrow();
    }
}
