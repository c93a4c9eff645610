package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.DEGREE_CELSIUS;
import static org.riseandgel.core.quantity.Unit.KELVIN;
import static org.riseandgel.core.quantity.Unit.MINUTE;
import static org.riseandgel.core.quantity.Unit.ONE;
import static org.riseandgel.core.quantity.Unit.PERCENT;
import static org.riseandgel.core.quantity.Unit.PHP;

import java.util.function.UnaryOperator;
import org.riseandgel.core.gel.GelForecast;
import org.riseandgel.core.gel.GelModel;
import org.riseandgel.core.gel.GelPrior;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.TimeSpan;

/** The steps from the usual gel time to the one of this dose and this temperature, and what the wrong ways give. */
final class GelWork {
    static final String MEDIAN = "median";

    private static final GelPrior USUAL = GelPrior.usual();
    private static final double JOULES = 1000;

    private final Given given;
    private final Work work;
    private final GelModel model;
    private final GelForecast forecast;
    private final Php dose;
    private final Temperature temperature;

    GelWork(Given given, Work work) {
        this.given = given;
        this.work = work;
        model = GelInputs.model(given);
        forecast = GelInputs.forecast(given);
        dose = given.get(GelInputs.DOSE, Php.class);
        temperature = given.get(GelInputs.TEMPERATURE, Temperature.class);
    }

    GelForecast forecast() {
        return forecast;
    }

    /** The middle time, the dose and the temperature counted in. */
    TimeSpan median() {
        Ratio byDose = byDose();
        Ratio byWarmth = byWarmth();
        return work.step(
                MEDIAN,
                "Middle of the gel time: half of such batches gel before it",
                "t = t₀ × factor of the dose × factor of the warmth",
                "{} × {} × {}",
                minutes(model.referenceTime().inMinutes() * byDose.asNumber() * byWarmth.asNumber()),
                MINUTE,
                Work.In.of(model.referenceTime(), MINUTE),
                Work.In.of(byDose, ONE),
                Work.In.of(byWarmth, ONE));
    }

    /** By what factor gels fall before and after the middle. */
    Ratio spread() {
        return work.step(
                "spread",
                "How far gels scatter about the middle, as a factor",
                "from the scatter between batches, and from what is not known of this dose and temperature",
                "for a chance of {}",
                Ratio.of(forecast.median().inSeconds() / forecast.low().inSeconds()),
                ONE,
                Work.In.of(given.get(GelInputs.CHANCE, Concentration.class), PERCENT));
    }

    TimeSpan early(String id, String label, TimeSpan median, Ratio spread) {
        return work.step(
                id,
                label,
                "middle ÷ factor",
                "{} ÷ {}",
                minutes(median.inMinutes() / spread.asNumber()),
                MINUTE,
                Work.In.of(median, MINUTE),
                Work.In.of(spread, ONE));
    }

    TimeSpan late(String id, String label, TimeSpan median, Ratio spread) {
        return work.step(
                id,
                label,
                "middle × factor",
                "{} × {}",
                minutes(median.inMinutes() * spread.asNumber()),
                MINUTE,
                Work.In.of(median, MINUTE),
                Work.In.of(spread, ONE));
    }

    /** The slips on the way to the middle, for a result that follows from the middle. */
    void slips(String result, UnaryOperator<TimeSpan> fromMedian) {
        double middle = forecast.median().inMinutes();
        double byDose = doseFactor();
        double byWarmth = warmthFactor();
        slip(
                Slip.RATIO_TURNED_ROUND,
                result,
                fromMedian,
                middle / byDose / byDose,
                "More gelling agent gels sooner: the usual dose stands above this dose.");
        slip(Slip.COLD_FOR_WARM, result, fromMedian, middle / byWarmth / byWarmth, Slip.COLD_FOR_WARM.line());
        slip(
                Slip.DIFFERENCE_FOR_RATIO,
                result,
                fromMedian,
                middle / byDose * (2 - dose.inPartsPerHundred() / USUAL.dose().inPartsPerHundred()),
                Slip.DIFFERENCE_FOR_RATIO.line());
        if (byWarmth != 1) {
            double whole = byWarmth > 1 ? 2 : 0.5;
            slip(Slip.WHOLE_STEP, result, fromMedian, middle / byWarmth * whole, Slip.WHOLE_STEP.line());
        }
        slip(Slip.DOSE_LEFT_OUT, result, fromMedian, middle / byDose, Slip.DOSE_LEFT_OUT.line());
        slip(Slip.TEMPERATURE_LEFT_OUT, result, fromMedian, middle / byWarmth, Slip.TEMPERATURE_LEFT_OUT.line());
    }

    /** Where the numbers come from. */
    void remarks() {
        work.note(
                "Beforehand the forecast takes {} at {} and {} (common practice, no source).",
                Work.In.of(USUAL.middle(), MINUTE),
                Work.In.of(USUAL.dose(), PHP),
                Work.In.of(USUAL.temperature(), DEGREE_CELSIUS));
        if (model.records().isEmpty()) {
            work.note("Your own records make it yours: one moves it a little, fifty nearly replace it.");
        } else {
            work.note(
                    "It has learned from {} gels of yours.",
                    Work.In.of(Ratio.of(model.records().size()), ONE));
        }
        long odd =
                model.records().stream().filter(record -> record.weight() < 1).count();
        if (odd > 0) {
            work.note(
                    "{} of them stand out and count for less. Look what was different.",
                    Work.In.of(Ratio.of(odd), ONE));
        }
    }

    private void slip(Slip slip, String result, UnaryOperator<TimeSpan> fromMedian, double median, String line) {
        work.slip(slip, result, () -> fromMedian.apply(minutes(median)), line);
    }

    /** (d₀ ÷ d)^a; records that turn it round turn the fraction round, so that the power is written without a sign. */
    private Ratio byDose() {
        boolean usual = model.doseExponent() >= 0;
        Php above = usual ? USUAL.dose() : dose;
        Php below = usual ? dose : USUAL.dose();
        return work.step(
                "doseFactor",
                "How the dose changes the usual gel time",
                usual ? "(d₀ ÷ d)^a" : "(d ÷ d₀)^a",
                "({} ÷ {})^{}",
                Ratio.of(doseFactor()),
                ONE,
                Work.In.of(above, PHP),
                Work.In.of(below, PHP),
                Work.In.of(Ratio.of(Math.abs(model.doseExponent())), ONE));
    }

    private Ratio byWarmth() {
        boolean usual = model.activationEnergy() >= 0;
        Temperature first = usual ? temperature : USUAL.temperature();
        Temperature second = usual ? USUAL.temperature() : temperature;
        return work.step(
                "warmthFactor",
                "How the warmth changes it",
                usual ? "e^(Ea ÷ R × (1 ÷ T − 1 ÷ T₀)), T in K" : "e^(Ea ÷ R × (1 ÷ T₀ − 1 ÷ T)), T in K",
                "e^({} ÷ {} × (1 ÷ {} − 1 ÷ {}))",
                Ratio.of(warmthFactor()),
                ONE,
                Work.In.of(Ratio.of(Math.abs(model.activationEnergy()) * JOULES), ONE),
                Work.In.of(Ratio.of(GelModel.GAS_CONSTANT), ONE),
                Work.In.of(first, KELVIN),
                Work.In.of(second, KELVIN));
    }

    private double doseFactor() {
        double share = USUAL.dose().inPartsPerHundred() / dose.inPartsPerHundred();
        return StrictMath.pow(share, model.doseExponent());
    }

    private double warmthFactor() {
        double colder = 1 / temperature.in(KELVIN) - 1 / USUAL.temperature().in(KELVIN);
        return StrictMath.exp(model.activationEnergy() * JOULES / GelModel.GAS_CONSTANT * colder);
    }

    private static TimeSpan minutes(double value) {
        return TimeSpan.ofMinutes(value);
    }
}
