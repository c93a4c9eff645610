package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.GRAM_PER_MILLILITRE;
import static org.riseandgel.core.quantity.Unit.MILLILITRE;

import java.util.List;
import org.riseandgel.core.mold.Cavity;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Volume;

/** How much a mold takes, from the modelling clay that lay where the foam will be. */
public final class CavityFromClay implements Calculation {
    static final String CLAY = "clay";
    static final String DENSITY = "clayDensity";
    static final String CAVITY = "cavity";

    @Override
    public String id() {
        return "cavity-from-clay";
    }

    @Override
    public String title() {
        return "Cavity from clay";
    }

    @Override
    public String purpose() {
        return "How much foam one mold takes, from the modelling clay that you took out of it.";
    }

    @Override
    public Task task() {
        return Task.MOLD;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                new Input.Measured(
                        CLAY, "Clay", "All the clay that lay where the foam will be.", GRAM, 0.1, 50_000, 424.0),
                new Input.Measured(
                        DENSITY,
                        "Density of the clay",
                        "1.6 g/mL is a usual value (common practice, no source). Weigh a block of yours of known size.",
                        GRAM_PER_MILLILITRE,
                        0.5,
                        4,
                        1.6));
    }

    @Override
    public List<Result> results() {
        return List.of(new Result(CAVITY, "Cavity of one mold", MILLILITRE, 1));
    }

    @Override
    public String inputAt(String what) {
        return CLAY;
    }

    @Override
    public void work(Given given, Work work) {
        Mass clay = given.get(CLAY, Mass.class);
        Density density = given.get(DENSITY, Density.class);
        Volume cavity = work.step(
                CAVITY,
                "Cavity of one mold",
                "V = m ÷ ρ",
                "{} ÷ {}",
                Cavity.fromClay(clay, density),
                MILLILITRE,
                Work.In.of(clay, GRAM),
                Work.In.of(density, GRAM_PER_MILLILITRE));
        work.result(CAVITY, cavity);
        double grams = clay.inGrams();
        double gramsPerMillilitre = density.inGramsPerMillilitre();
        work.slip(Slip.MULTIPLIED_FOR_DIVIDED, CAVITY, () -> Volume.ofMillilitres(grams * gramsPerMillilitre));
        work.slip(
                Slip.DENSITY_LEFT_OUT,
                CAVITY,
                () -> Volume.ofMillilitres(grams),
                "Only of a stuff of 1 g/mL does a millilitre weigh a gram. Clay is denser.");
        work.slip(
                Slip.RATIO_TURNED_ROUND,
                CAVITY,
                () -> Volume.ofMillilitres(gramsPerMillilitre / grams),
                "Volume is mass over density, not density over mass.");
        work.note("This is the cavity alone: overfill and what stays in the bowl come on top.");
    }
}
