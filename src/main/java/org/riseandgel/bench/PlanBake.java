package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.DEGREE_CELSIUS;
import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.HOUR;
import static org.riseandgel.core.quantity.Unit.WATT_HOUR;

import java.util.List;
import org.riseandgel.core.drying.BakePlan;
import org.riseandgel.core.quantity.Energy;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.TimeSpan;

/** How long to bake a piece of some thickness, and whether the oven is too warm for it. */
public final class PlanBake implements Calculation {
    static final String OVEN = "oven";
    static final String WARMEST = "warmest";
    static final String WATER = "water";
    static final String HEAT = "heat";
    static final String BY_THICKNESS = "timeByThickness";
    static final String BAKE = "bakeTime";

    @Override
    public String id() {
        return "bake-plan";
    }

    @Override
    public String title() {
        return "Bake";
    }

    @Override
    public String purpose() {
        return "How long to bake a piece, and whether the oven is too warm for it.";
    }

    @Override
    public Task task() {
        return Task.DRYING;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                ThicknessWork.thickness(4),
                ThicknessWork.knownThickness(),
                ThicknessWork.knownTime(),
                new Input.Measured(
                        OVEN,
                        "Temperature of the oven",
                        "Measure it inside, beside the mold: 110 °F (43 °C) is common practice, no source.",
                        DEGREE_CELSIUS,
                        10,
                        150,
                        43.0),
                new Input.Measured(
                        WARMEST,
                        "Warmest that your formula bears",
                        "43.5 °C, a little above 110 °F, is common practice, no source. Your supplier's word comes first.",
                        DEGREE_CELSIUS,
                        10,
                        99,
                        43.5),
                new Input.Measured(
                        WATER,
                        "Water to bake out",
                        "What the wet piece weighs more than the dry one. 60 g is only an example.",
                        GRAM,
                        0,
                        50_000,
                        60.0));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(BAKE, "Bake for", HOUR, 0.1),
                new Result(BY_THICKNESS, "Time by the thickness alone", HOUR, 0.1),
                new Result(HEAT, "Heat that the water takes", WATT_HOUR, 1));
    }

    @Override
    public String inputAt(String what) {
        return what.equals("oven") ? OVEN : ThicknessWork.THICKNESS;
    }

    @Override
    public void work(Given given, Work work) {
        TimeSpan known = given.get(ThicknessWork.KNOWN_TIME, TimeSpan.class);
        BakePlan plan = plan(given);
        TimeSpan byThickness = ThicknessWork.time(BY_THICKNESS, "Time by the thickness alone", given, work);
        work.result(BY_THICKNESS, byThickness);
        work.result(
                BAKE,
                work.step(
                        BAKE,
                        "Bake for",
                        "the longer of the known time and the time by thickness",
                        "{} or {}",
                        BakePlan.longer(known, byThickness),
                        HOUR,
                        Work.In.of(known, HOUR),
                        Work.In.of(byThickness, HOUR)));
        work.result(HEAT, heat(plan, given, work));
        ThicknessWork.timeSlips(BY_THICKNESS, given, work);
        ThicknessWork.timeSlips(BAKE, given, work);
        remarks(plan, given, work);
    }

    private static BakePlan plan(Given given) {
        BakePlan.Rule rule = new BakePlan.Rule(
                given.get(WARMEST, Temperature.class),
                given.get(ThicknessWork.KNOWN_TIME, TimeSpan.class),
                given.get(ThicknessWork.KNOWN_THICKNESS, Length.class));
        return BakePlan.of(
                given.get(OVEN, Temperature.class),
                rule,
                given.get(ThicknessWork.THICKNESS, Length.class),
                given.get(WATER, Mass.class),
                BakePlan.STANDARD_PASCALS);
    }

    private static Energy heat(BakePlan plan, Given given, Work work) {
        return work.step(
                HEAT,
                "Heat that the water takes",
                "Q = m × heat of evaporation of water at the oven's temperature",
                "{} at {}",
                Energy.ofKilojoules(plan.heat().inKilojoules()),
                WATT_HOUR,
                Work.In.of(given.get(WATER, Mass.class), GRAM),
                Work.In.of(plan.oven(), DEGREE_CELSIUS));
    }

    private static void remarks(BakePlan plan, Given given, Work work) {
        if (plan.tooWarmForFormula()) {
            work.note(
                    "The oven is at {}, warmer than the {} that your formula bears: expect steam pockets and a brittle"
                            + " skin. Turn it down.",
                    Work.In.of(plan.oven(), DEGREE_CELSIUS),
                    Work.In.of(given.get(WARMEST, Temperature.class), DEGREE_CELSIUS));
        }
        work.note("The heat is for the water alone: warming the mold comes on top.");
        work.note("A thinner piece is baked as long as the known one: the mold has to warm through first.");
        work.note(
                "Only weighing back tells that a piece is dry. Open the mold when it has cooled: it is heavy and hot.");
    }
}
