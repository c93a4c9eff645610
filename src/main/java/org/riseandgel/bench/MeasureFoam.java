package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.GRAM_PER_MILLILITRE;
import static org.riseandgel.core.quantity.Unit.MILLILITRE;
import static org.riseandgel.core.quantity.Unit.ONE;

import java.util.List;
import org.riseandgel.core.batch.Expansion;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;

/** How dense a foam is and how far it has risen, from a cup of it on a balance. */
public final class MeasureFoam implements Calculation {
    static final String FULL = "fullCup";
    static final String EMPTY = "emptyCup";
    static final String CUP = "cupVolume";
    static final String LIQUID = "liquidDensity";
    static final String FOAM_DENSITY = "foamDensity";
    static final String EXPANSION = "expansion";

    @Override
    public String id() {
        return "foam-density";
    }

    @Override
    public String title() {
        return "Foam density";
    }

    @Override
    public String purpose() {
        return "How far a foam has risen, from what one cup of it weighs.";
    }

    @Override
    public Task task() {
        return Task.WHIPPING;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                new Input.Measured(EMPTY, "Empty cup", "Weigh the dry cup first.", GRAM, 0, 10_000, 12.0),
                new Input.Measured(
                        FULL,
                        "Full cup",
                        "Fill without gaps and strike off level with the rim.",
                        GRAM,
                        0.1,
                        20_000,
                        42.0),
                new Input.Measured(
                        CUP,
                        "Volume of the cup",
                        "Up to the rim. Find it with water: a gram of water is close to a millilitre.",
                        MILLILITRE,
                        1,
                        10_000,
                        120.0),
                new Input.Measured(
                        LIQUID,
                        "Density of the liquid before whipping",
                        "1.02 g/mL is common practice, no source. Weigh a measured volume of yours.",
                        GRAM_PER_MILLILITRE,
                        0.5,
                        2,
                        1.02));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(FOAM_DENSITY, "Density of the foam", GRAM_PER_MILLILITRE, 0.001),
                new Result(EXPANSION, "Expansion ratio", ONE, 0.1));
    }

    @Override
    public String inputAt(String what) {
        return FULL;
    }

    @Override
    public void work(Given given, Work work) {
        Mass full = given.get(FULL, Mass.class);
        Mass empty = given.get(EMPTY, Mass.class);
        Volume cup = given.get(CUP, Volume.class);
        Density liquid = given.get(LIQUID, Density.class);
        Mass foam = work.step(
                "foamMass",
                "What the foam weighs",
                "m = full cup − empty cup",
                "{} − {}",
                Expansion.foamMass(full, empty),
                GRAM,
                Work.In.of(full, GRAM),
                Work.In.of(empty, GRAM));
        Density density = work.step(
                FOAM_DENSITY,
                "Density of the foam",
                "ρ = m ÷ V",
                "{} ÷ {}",
                Expansion.foamDensity(foam, cup),
                GRAM_PER_MILLILITRE,
                Work.In.of(foam, GRAM),
                Work.In.of(cup, MILLILITRE));
        Ratio expansion = work.step(
                EXPANSION,
                "Expansion ratio",
                "R = density of the liquid ÷ density of the foam",
                "{} ÷ {}",
                Expansion.byDensity(liquid, density),
                ONE,
                Work.In.of(liquid, GRAM_PER_MILLILITRE),
                Work.In.of(density, GRAM_PER_MILLILITRE));
        work.result(FOAM_DENSITY, density);
        work.result(EXPANSION, expansion);
        densitySlips(work, full, foam, cup);
        expansionSlips(work, full, density, cup, liquid);
        remarks(work, expansion);
    }

    private static void densitySlips(Work work, Mass full, Mass foam, Volume cup) {
        work.slip(Slip.TARE_LEFT_IN, FOAM_DENSITY, () -> Expansion.foamDensity(full, cup));
        work.slip(
                Slip.MULTIPLIED_FOR_DIVIDED,
                FOAM_DENSITY,
                () -> Density.ofGramsPerMillilitre(foam.inGrams() * cup.inMillilitres()),
                "Density is mass divided by volume.");
        work.slip(
                Slip.RATIO_TURNED_ROUND,
                FOAM_DENSITY,
                () -> Density.ofGramsPerMillilitre(cup.inMillilitres() / foam.inGrams()),
                "Density is mass over volume, not volume over mass.");
    }

    private static void expansionSlips(Work work, Mass full, Density foam, Volume cup, Density liquid) {
        Ratio right = Expansion.byDensity(liquid, foam);
        work.slip(Slip.TARE_LEFT_IN, EXPANSION, () -> Expansion.byDensity(liquid, Expansion.foamDensity(full, cup)));
        work.slip(Slip.RATIO_TURNED_ROUND, EXPANSION, () -> Expansion.byDensity(foam, liquid));
        work.slip(
                Slip.MULTIPLIED_FOR_DIVIDED,
                EXPANSION,
                () -> Ratio.of(liquid.inGramsPerMillilitre() * foam.inGramsPerMillilitre()));
        work.slip(Slip.GAIN_FOR_RATIO, EXPANSION, () -> Ratio.of(right.asNumber() - 1));
        work.slip(Slip.DENSITY_LEFT_OUT, EXPANSION, () -> Expansion.byDensity(Density.ofGramsPerMillilitre(1), foam));
    }

    private static void remarks(Work work, Ratio expansion) {
        work.note("The air in the foam is left out of its weight: it is about 1 g in a litre.");
        if (expansion.asNumber() < 1) {
            work.note("A ratio below 1 says that the foam is denser than the liquid it came from: weigh again.");
        }
    }
}
