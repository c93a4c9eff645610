package org.riseandgel.core;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.riseandgel.core.air.FluorideInAir;
import org.riseandgel.core.air.Fluorosilicate;
import org.riseandgel.core.air.SaltInAir;
import org.riseandgel.core.air.SaltMass;
import org.riseandgel.core.air.SaltRelease;
import org.riseandgel.core.air.Shift;
import org.riseandgel.core.air.WellMixedRoom;
import org.riseandgel.core.batch.Batch;
import org.riseandgel.core.batch.Dispersion;
import org.riseandgel.core.batch.Formula;
import org.riseandgel.core.batch.Stock;
import org.riseandgel.core.drying.BakePlan;
import org.riseandgel.core.drying.DryingCurve;
import org.riseandgel.core.drying.PieceWeighing;
import org.riseandgel.core.drying.SlabDrying;
import org.riseandgel.core.drying.WaterLeft;
import org.riseandgel.core.drying.WeighBack;
import org.riseandgel.core.gel.GelClock;
import org.riseandgel.core.gel.GelForecast;
import org.riseandgel.core.gel.GelModel;
import org.riseandgel.core.gel.GelPrior;
import org.riseandgel.core.gel.WorkPlan;
import org.riseandgel.core.mold.Cavity;
import org.riseandgel.core.mold.FoamNeeded;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Volume;
import org.riseandgel.core.rise.RiseCurve;
import org.riseandgel.core.rise.RiseFit;
import org.riseandgel.core.rise.RiseForecast;
import org.riseandgel.core.rise.RiseReading;
import org.riseandgel.core.statistics.Estimate;
import org.riseandgel.core.statistics.Interval;
import org.riseandgel.core.statistics.Point;
import org.riseandgel.core.statistics.StraightLineFit;
import org.riseandgel.core.statistics.Wilson;
import org.riseandgel.core.vessel.TaperedVessel;
import org.riseandgel.core.yield.PieceCost;
import org.riseandgel.core.yield.Shrinkage;

/** What the worked examples of the formula pages call, by their names: inputs of a page in, results of the core out. */
final class FormulaExamples {
    /** A plain number with the unit as a page writes it, for what has no quantity of its own. */
    record Plain(double value, String unit) {}

    static final Map<String, Function<FormulaPage.Example, Map<String, Object>>> ALL = all();

    private FormulaExamples() {}

    private static Map<String, Function<FormulaPage.Example, Map<String, Object>>> all() {
        Map<String, Function<FormulaPage.Example, Map<String, Object>>> all = new LinkedHashMap<>();
        all.put("convert-temperature", page -> Map.of("temperature", page.quantity("fahrenheit", Temperature.class)));
        all.put("convert-mass", page -> Map.of("mass", page.quantity("ounces", Mass.class)));
        all.put("tapered-vessel", FormulaExamples::taperedVessel);
        all.put("scale-batch", FormulaExamples::scaleBatch);
        all.put("most-from-stock", FormulaExamples::mostFromStock);
        all.put("dispersion", FormulaExamples::dispersion);
        all.put(
                "cavity-from-clay",
                page -> Map.of(
                        "cavity",
                        Cavity.fromClay(page.quantity("clay", Mass.class), page.quantity("density", Density.class))));
        all.put(
                "cavity-from-water",
                page -> Map.of(
                        "cavity",
                        Cavity.fromWater(
                                page.quantity("water", Mass.class), page.quantity("temperature", Temperature.class))));
        all.put("foam-needed", FormulaExamples::foamNeeded);
        all.put("rise-forecast", FormulaExamples::riseForecast);
        all.put("gel-forecast", FormulaExamples::gelForecast);
        all.put("gel-clock", FormulaExamples::gelClock);
        all.put("weigh-back", FormulaExamples::weighBack);
        all.put("water-left", FormulaExamples::waterLeft);
        all.put("bake-plan", FormulaExamples::bakePlan);
        all.put("slab", FormulaExamples::slab);
        all.put("fluoride-content", FormulaExamples::fluorideContent);
        all.put("room-air", FormulaExamples::roomAir);
        all.put("shift-exposure", FormulaExamples::shiftExposure);
        all.put("shrinkage", FormulaExamples::shrinkage);
        all.put(
                "piece-cost",
                page -> Map.of(
                        "good",
                        plain(PieceCost.ofGood(page.number("made"), page.quantity("scrap", Concentration.class)))));
        all.put("straight-line", FormulaExamples::straightLine);
        all.put("wilson", FormulaExamples::wilson);
        return all;
    }

    private static Map<String, Object> taperedVessel(FormulaPage.Example page) {
        TaperedVessel vessel = new TaperedVessel(
                page.quantity("bottomDiameter", Length.class),
                page.quantity("topDiameter", Length.class),
                page.quantity("depth", Length.class));
        return Map.of("capacity", vessel.capacity(), "height", vessel.heightOf(page.quantity("poured", Volume.class)));
    }

    private static Map<String, Object> scaleBatch(FormulaPage.Example page) {
        Batch batch = Batch.ofBase(Formula.usual(), page.quantity("base", Mass.class));
        return Map.of(
                "total",
                batch.total(),
                "gellingAgent",
                batch.massOf(Formula.usual().row("Gelling agent")));
    }

    private static Map<String, Object> mostFromStock(FormulaPage.Example page) {
        Stock.Most most = new Stock(Map.of(
                        "Base", page.quantity("base", Mass.class),
                        "Foaming agent", page.quantity("foamingAgent", Mass.class),
                        "Water", page.quantity("water", Mass.class),
                        "Gelling agent", page.quantity("gellingAgent", Mass.class)))
                .most(Formula.usual());
        return Map.of("usedBase", most.batch().base(), "limiting", String.join(", ", most.limiting()));
    }

    private static Map<String, Object> dispersion(FormulaPage.Example page) {
        Dispersion dispersion = new Dispersion(page.quantity("solids", Concentration.class));
        Mass wet = dispersion.forDry(page.quantity("dry", Mass.class));
        return Map.of("dispersion", wet, "water", dispersion.waterIn(wet));
    }

    private static Map<String, Object> foamNeeded(FormulaPage.Example page) {
        return Map.of(
                "foam",
                new FoamNeeded(
                                page.quantity("cavity", Volume.class),
                                page.quantity("overfill", Concentration.class),
                                (int) page.number("pieces"),
                                page.quantity("bowlLoss", Concentration.class))
                        .total());
    }

    private static Map<String, Object> riseForecast(FormulaPage.Example page) {
        List<Double> minutes = page.numbers("minutes");
        List<Double> ratios = page.numbers("ratios");
        RiseCurve curve = (RiseCurve) RiseFit.of(IntStream.range(0, minutes.size())
                .mapToObj(i -> new RiseReading(TimeSpan.ofMinutes(minutes.get(i)), Ratio.of(ratios.get(i))))
                .toList());
        RiseForecast.Reached reached = (RiseForecast.Reached) curve.timeTo(Ratio.of(page.number("wanted")), 0.9);
        return Map.of("highest", plain(curve.highest(0.9).value()), "minutesToWanted", reached.middle());
    }

    private static Map<String, Object> gelForecast(FormulaPage.Example page) {
        GelForecast forecast = GelModel.believing(GelPrior.usual())
                .forecast(
                        page.quantity("dose", Php.class),
                        page.quantity("temperature", Temperature.class),
                        page.number("probability"));
        return Map.of("low", forecast.low(), "median", forecast.median(), "high", forecast.high());
    }

    private static Map<String, Object> gelClock(FormulaPage.Example page) {
        TimeSpan early = page.quantity("gelsFrom", TimeSpan.class);
        GelClock clock = GelClock.of(
                WorkPlan.inTurn(
                        page.quantity("disperse", TimeSpan.class),
                        page.quantity("refine", TimeSpan.class),
                        page.quantity("fill", TimeSpan.class),
                        page.quantity("close", TimeSpan.class)),
                new GelForecast(early, early, early, 0.9),
                GelClock.USUAL_COMFORT);
        return Map.of(
                "slack",
                new Plain(clock.slackSeconds(), "s"),
                "advice",
                clock.advice().name());
    }

    private static Map<String, Object> weighBack(FormulaPage.Example page) {
        List<Double> hours = page.numbers("hours");
        List<Double> grams = page.numbers("grams");
        DryingCurve curve = (DryingCurve) WeighBack.of(
                IntStream.range(0, hours.size())
                        .mapToObj(i -> new PieceWeighing(TimeSpan.ofHours(hours.get(i)), Mass.ofGrams(grams.get(i))))
                        .toList(),
                page.quantity("readability", Mass.class));
        return Map.of(
                "dry",
                Mass.ofGrams(curve.dryGrams(0.9).value()),
                "hours",
                curve.timeTo(page.number("shareLeft"), 0.9).middle());
    }

    private static Map<String, Object> waterLeft(FormulaPage.Example page) {
        WaterLeft water = new WaterLeft(
                page.quantity("first", Mass.class), page.quantity("now", Mass.class), page.quantity("dry", Mass.class));
        return Map.of("left", water.left(), "share", water.shareLeft());
    }

    private static Map<String, Object> bakePlan(FormulaPage.Example page) {
        BakePlan plan = BakePlan.of(
                page.quantity("oven", Temperature.class),
                BakePlan.Rule.usual(page.quantity("knownThickness", Length.class)),
                page.quantity("thickness", Length.class),
                page.quantity("water", Mass.class),
                BakePlan.STANDARD_PASCALS);
        return Map.of(
                "time",
                plan.time(),
                "heat",
                new Plain(plan.heat().inKilojoules(), "kJ"),
                "tooWarm",
                plan.tooWarmForFormula() ? "yes" : "no");
    }

    private static Map<String, Object> slab(FormulaPage.Example page) {
        double fourier = page.number("fourier");
        return Map.of("mean", plain(SlabDrying.meanLeft(fourier)), "middle", plain(SlabDrying.centreLeft(fourier)));
    }

    private static Map<String, Object> fluorideContent(FormulaPage.Example page) {
        SaltMass salt = SaltMass.ofGrams(page.quantity("salt", Mass.class).inGrams());
        Fluorosilicate sodium = Fluorosilicate.SODIUM;
        return Map.of(
                "fluoride",
                new Plain(sodium.fluorideIn(salt).inMilligrams(), "mg"),
                "acid",
                new Plain(sodium.acidMillimoles(salt), "mmol"),
                "limitAsSalt",
                new Plain(sodium.asSalt(Shift.LIMIT).inMilligramsPerCubicMetre(), "mg/m3"));
    }

    private static Map<String, Object> roomAir(FormulaPage.Example page) {
        WellMixedRoom room = WellMixedRoom.withFlow(page.quantity("volume", Volume.class), page.number("flow"));
        SaltInAir air = room.after(
                page.quantity("time", TimeSpan.class),
                SaltInAir.ofMilligramsPerCubicMetre(0),
                new SaltRelease(
                        SaltMass.ofGrams(page.quantity("dust", Mass.class).inGrams()),
                        page.quantity("over", TimeSpan.class)));
        return Map.of("air", new Plain(air.inMilligramsPerCubicMetre(), "mg/m3"));
    }

    private static Map<String, Object> shiftExposure(FormulaPage.Example page) {
        List<Double> air = page.numbers("air");
        List<Double> hours = page.numbers("hours");
        Shift shift = new Shift(IntStream.range(0, air.size())
                .mapToObj(i -> new Shift.Spell(
                        FluorideInAir.ofMilligramsPerCubicMetre(air.get(i)), TimeSpan.ofHours(hours.get(i))))
                .toList());
        return Map.of("average", new Plain(shift.average().inMilligramsPerCubicMetre(), "mg/m3"));
    }

    private static Map<String, Object> shrinkage(FormulaPage.Example page) {
        Length sculpt = page.quantity("sculpt", Length.class);
        Shrinkage shrinkage = Shrinkage.measured(sculpt, page.quantity("piece", Length.class));
        return Map.of("ofSculpt", shrinkage.ofSculpt(), "sculptFor", shrinkage.sculptFor(sculpt));
    }

    private static Map<String, Object> straightLine(FormulaPage.Example page) {
        List<Double> x = page.numbers("x");
        List<Double> y = page.numbers("y");
        Estimate estimate = StraightLineFit.of(IntStream.range(0, x.size())
                        .mapToObj(i -> new Point(x.get(i), y.get(i)))
                        .toList())
                .lineAt(page.number("at"), 0.95);
        return Map.of("value", plain(estimate.value()), "error", plain(estimate.standardError()));
    }

    private static Map<String, Object> wilson(FormulaPage.Example page) {
        Interval interval =
                Wilson.interval((int) page.number("right"), (int) page.number("n"), page.number("probability"));
        return Map.of("low", plain(interval.low()), "high", plain(interval.high()));
    }

    private static Plain plain(double value) {
        return new Plain(value, "1");
    }
}
