package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.PERCENT;
import static org.riseandgel.core.quantity.Unit.PHP;

import java.util.List;
import org.riseandgel.core.batch.Batch;
import org.riseandgel.core.batch.Dispersion;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Php;

/** How much of a gelling agent that comes stirred into water holds the dry dose, and the water it brings. */
public final class DispersionDose implements Calculation {
    static final String BASE = "base";
    static final String DOSE = "dryDose";
    static final String SOLIDS = "solids";
    static final String DRY_MASS = "dryMass";
    static final String DISPERSION_MASS = "dispersionMass";
    static final String WATER_MASS = "waterBrought";
    static final String DISPERSION_PHP = "dispersionPhp";

    @Override
    public String id() {
        return "dispersion-dose";
    }

    @Override
    public String title() {
        return "Dispersion dose";
    }

    @Override
    public String purpose() {
        return "How much dispersion to weigh for a dry dose of gelling agent, and how much water it brings.";
    }

    @Override
    public Task task() {
        return Task.WEIGHING_OUT;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                new Input.Measured(BASE, "Base", "The base in the batch, without the rest.", GRAM, 1, 100_000, 150.0),
                new Input.Measured(
                        DOSE,
                        "Dose of dry gelling agent",
                        "Counted dry. 10 to 12 php (common practice, no source).",
                        PHP,
                        0.1,
                        50,
                        11.0),
                new Input.Measured(
                        SOLIDS,
                        "Solids in the dispersion",
                        "The share of dry salt by mass. Read it from the label of yours; 40 % is only an example.",
                        PERCENT,
                        1,
                        99,
                        40.0));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(DISPERSION_MASS, "Dispersion to weigh", GRAM, 0.1),
                new Result(DRY_MASS, "Dry gelling agent in it", GRAM, 0.1),
                new Result(WATER_MASS, "Water it brings", GRAM, 0.1),
                new Result(DISPERSION_PHP, "Dose counted as dispersion", PHP, 0.1));
    }

    @Override
    public String inputAt(String what) {
        return SOLIDS;
    }

    @Override
    public void work(Given given, Work work) {
        Mass base = given.get(BASE, Mass.class);
        Php dose = given.get(DOSE, Php.class);
        Dispersion dispersion = new Dispersion(given.get(SOLIDS, Concentration.class));
        Mass dry = work.step(
                DRY_MASS,
                "Dry gelling agent",
                "dry = base × php ÷ 100",
                "{} × {} ÷ 100",
                Batch.portionOf(base, dose),
                GRAM,
                Work.In.of(base, GRAM),
                Work.In.of(dose, PHP));
        work.result(DRY_MASS, dry);
        weigh(dispersion, dry, work);
        work.result(
                DISPERSION_PHP,
                work.step(
                        DISPERSION_PHP,
                        "Dose counted as dispersion",
                        "php of dispersion = php dry ÷ solids",
                        "{} ÷ {}",
                        dispersion.forDry(dose),
                        PHP,
                        Work.In.of(dose, PHP),
                        Work.In.of(dispersion.solids(), PERCENT)));
        slips(base, dose, dispersion, work);
        work.note("Give the formula that much less water, or the batch gets too wet.");
    }

    @Override
    public List<String> cautions() {
        return BatchInputs.gellingAgentCautions();
    }

    private static void weigh(Dispersion dispersion, Mass dry, Work work) {
        Mass whole = work.step(
                DISPERSION_MASS,
                "Dispersion to weigh",
                "dispersion = dry ÷ solids",
                "{} ÷ {}",
                dispersion.forDry(dry),
                GRAM,
                Work.In.of(dry, GRAM),
                Work.In.of(dispersion.solids(), PERCENT));
        work.result(DISPERSION_MASS, whole);
        work.result(
                WATER_MASS,
                work.step(
                        WATER_MASS,
                        "Water it brings",
                        "water = dispersion × (100 % − solids)",
                        "{} × (100 % − {})",
                        dispersion.waterIn(whole),
                        GRAM,
                        Work.In.of(whole, GRAM),
                        Work.In.of(dispersion.solids(), PERCENT)));
    }

    private static void slips(Mass base, Php dose, Dispersion dispersion, Work work) {
        Mass dry = Batch.portionOf(base, dose);
        Mass multiplied = dispersion.dryIn(dry);
        work.slip(Slip.DISPERSION_FOR_DRY, DISPERSION_MASS, () -> dry);
        work.slip(Slip.MULTIPLIED_FOR_DIVIDED, DISPERSION_MASS, () -> multiplied);
        work.slip(Slip.DISPERSION_FOR_DRY, WATER_MASS, () -> dispersion.waterIn(dry));
        work.slip(Slip.MULTIPLIED_FOR_DIVIDED, WATER_MASS, () -> dispersion.waterIn(multiplied));
        work.slip(Slip.DISPERSION_FOR_DRY, DRY_MASS, () -> multiplied);
        work.slip(Slip.DIVIDED_FOR_MULTIPLIED, DRY_MASS, () -> Mass.ofGrams(base.inGrams() / dose.asShareOfBase()));
        work.slip(Slip.DISPERSION_FOR_DRY, DISPERSION_PHP, () -> dose);
        work.slip(Slip.MULTIPLIED_FOR_DIVIDED, DISPERSION_PHP, () -> dispersion.dryIn(dose));
    }
}
