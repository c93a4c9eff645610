package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.DEGREE_CELSIUS;
import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.GRAM_PER_MILLILITRE;
import static org.riseandgel.core.quantity.Unit.MILLILITRE;

import java.util.List;
import org.riseandgel.core.mold.Cavity;
import org.riseandgel.core.mold.WaterDensity;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Temperature;

/** How much a mold takes, from the water that fills it. */
public final class CavityFromWater implements Calculation {
    static final String BEFORE = "jugBefore";
    static final String AFTER = "jugAfter";
    static final String TEMPERATURE = "temperature";
    static final String WATER = "waterMass";
    static final String DENSITY = "waterDensity";
    static final String CAVITY = "cavity";

    @Override
    public String id() {
        return "cavity-from-water";
    }

    @Override
    public String title() {
        return "Cavity from water";
    }

    @Override
    public String purpose() {
        return "How much foam one mold takes, from the water that you poured into it.";
    }

    @Override
    public Task task() {
        return Task.MOLD;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                new Input.Measured(
                        BEFORE, "Jug of water before pouring", "Weigh the full jug first.", GRAM, 0.1, 50_000, 620.0),
                new Input.Measured(
                        AFTER,
                        "Jug of water after pouring",
                        "Weigh it again, with all that ran over poured back. The mold is closed: open, a negative with no core"
                                + " in it holds more than the cavity.",
                        GRAM,
                        0,
                        50_000,
                        370.0),
                new Input.Measured(
                        TEMPERATURE,
                        "Temperature of the water",
                        "Warm water is a little lighter. 20 °C if it has stood in the room.",
                        DEGREE_CELSIUS,
                        0,
                        40,
                        20.0));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(CAVITY, "Cavity of one mold", MILLILITRE, 1),
                new Result(WATER, "Water in the mold", GRAM, 0.1));
    }

    @Override
    public String inputAt(String what) {
        return AFTER;
    }

    @Override
    public void work(Given given, Work work) {
        Mass before = given.get(BEFORE, Mass.class);
        Mass after = given.get(AFTER, Mass.class);
        Temperature temperature = given.get(TEMPERATURE, Temperature.class);
        Mass water = work.step(
                WATER,
                "Water in the mold",
                "m = jug before − jug after",
                "{} − {}",
                poured(before, after),
                GRAM,
                Work.In.of(before, GRAM),
                Work.In.of(after, GRAM));
        Density density = work.step(
                DENSITY,
                "Density of water at that temperature",
                "ρ(t), from the table of water",
                "t = {}",
                WaterDensity.at(temperature),
                GRAM_PER_MILLILITRE,
                Work.In.of(temperature, DEGREE_CELSIUS));
        work.result(WATER, water);
        work.result(
                CAVITY,
                work.step(
                        CAVITY,
                        "Cavity of one mold",
                        "V = m ÷ ρ",
                        "{} ÷ {}",
                        Cavity.fromWater(water, density),
                        MILLILITRE,
                        Work.In.of(water, GRAM),
                        Work.In.of(density, GRAM_PER_MILLILITRE)));
        work.slip(Slip.TARE_LEFT_IN, CAVITY, () -> Cavity.fromWater(before, density));
        work.slip(Slip.TARE_LEFT_IN, WATER, () -> before);
        remarks(poured(before, after), temperature, work);
    }

    private static Mass poured(Mass before, Mass after) {
        if (!(before.inGrams() > after.inGrams())) {
            throw OutOfRangeException.because(
                    "jug after",
                    "the jug after pouring is %s g, must be less than the %s g before"
                            .formatted(after.inGrams(), before.inGrams()));
        }
        return Mass.ofGrams(before.inGrams() - after.inGrams());
    }

    private static void remarks(Mass water, Temperature temperature, Work work) {
        work.note(
                "The air lifts the water a little while it is weighed. With that counted it is {}: no mold notices.",
                Work.In.of(Cavity.fromWaterInAir(water, temperature), MILLILITRE));
        work.note("Bare plaster drinks water: seal the mold first, and fill it quickly.");
        work.note("This is the cavity alone: overfill and what stays in the bowl come on top.");
    }
}
