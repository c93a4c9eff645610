package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.PERCENT;
import static org.riseandgel.core.quantity.Unit.PHP;

import org.riseandgel.core.batch.Batch;
import org.riseandgel.core.batch.Dispersion;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Php;

/** The steps from a dose counted one way to the other, and what the wrong ways give. */
final class DispersionWork {
    private final Work work;
    private final Mass base;
    private final Dispersion dispersion;

    DispersionWork(Given given, Work work) {
        this.work = work;
        base = given.get(DispersionDose.BASE, Mass.class);
        dispersion = new Dispersion(given.get(DispersionDose.SOLIDS, Concentration.class));
    }

    void fromDry(Php dose) {
        Mass dry = portion(DispersionDose.DRY_MASS, "Dry salt", "dry", dose);
        Mass whole = work.step(
                DispersionDose.DISPERSION_MASS,
                "Dispersion to weigh",
                "dispersion = dry ÷ solids",
                "{} ÷ {}",
                dispersion.forDry(dry),
                GRAM,
                Work.In.of(dry, GRAM),
                solids());
        water(whole);
        Php weighed = work.step(
                DispersionDose.DISPERSION_PHP,
                "Dose counted as dispersion",
                "php of dispersion = php dry ÷ solids",
                "{} ÷ {}",
                dispersion.forDry(dose),
                PHP,
                Work.In.of(dose, PHP),
                solids());
        results(dry, whole, dose, weighed);
        slipsFromDry(dose, dry);
        work.note("A formula that counts the salt dry needs that much less water, or the batch gets too wet.");
    }

    void fromDispersion(Php dose) {
        Mass whole = portion(DispersionDose.DISPERSION_MASS, "Dispersion to weigh", "dispersion", dose);
        Mass dry = work.step(
                DispersionDose.DRY_MASS,
                "Dry salt in it",
                "dry = dispersion × solids",
                "{} × {}",
                dispersion.dryIn(whole),
                GRAM,
                Work.In.of(whole, GRAM),
                solids());
        water(whole);
        Php counted = work.step(
                DispersionDose.DRY_PHP,
                "Dose counted as dry salt",
                "php dry = php of dispersion × solids",
                "{} × {}",
                dispersion.dryIn(dose),
                PHP,
                Work.In.of(dose, PHP),
                solids());
        results(dry, whole, counted, dose);
        slipsFromDispersion(dose, whole);
        work.note("A formula that counts the agent as weighed has its water in the count already.");
    }

    private Mass portion(String id, String label, String symbol, Php dose) {
        return work.step(
                id,
                label,
                symbol + " = base × php ÷ 100",
                "{} × {} ÷ 100",
                Batch.portionOf(base, dose),
                GRAM,
                Work.In.of(base, GRAM),
                Work.In.of(dose, PHP));
    }

    private void water(Mass whole) {
        work.result(
                DispersionDose.WATER_MASS,
                work.step(
                        DispersionDose.WATER_MASS,
                        "Water it brings",
                        "water = dispersion × (100 % − solids)",
                        "{} × (100 % − {})",
                        dispersion.waterIn(whole),
                        GRAM,
                        Work.In.of(whole, GRAM),
                        solids()));
    }

    private void results(Mass dry, Mass whole, Php dryDose, Php weighedDose) {
        work.result(DispersionDose.DISPERSION_MASS, whole);
        work.result(DispersionDose.DRY_MASS, dry);
        work.result(DispersionDose.DISPERSION_PHP, weighedDose);
        work.result(DispersionDose.DRY_PHP, dryDose);
    }

    private void slipsFromDry(Php dose, Mass dry) {
        Mass multiplied = dispersion.dryIn(dry);
        work.slip(Slip.DISPERSION_FOR_DRY, DispersionDose.DISPERSION_MASS, () -> dry);
        work.slip(Slip.MULTIPLIED_FOR_DIVIDED, DispersionDose.DISPERSION_MASS, () -> multiplied);
        work.slip(Slip.DISPERSION_FOR_DRY, DispersionDose.WATER_MASS, () -> dispersion.waterIn(dry));
        work.slip(Slip.MULTIPLIED_FOR_DIVIDED, DispersionDose.WATER_MASS, () -> dispersion.waterIn(multiplied));
        work.slip(Slip.DISPERSION_FOR_DRY, DispersionDose.DRY_MASS, () -> multiplied);
        work.slip(Slip.DIVIDED_FOR_MULTIPLIED, DispersionDose.DRY_MASS, () -> divided(dose));
        work.slip(Slip.DISPERSION_FOR_DRY, DispersionDose.DISPERSION_PHP, () -> dose);
        work.slip(Slip.MULTIPLIED_FOR_DIVIDED, DispersionDose.DISPERSION_PHP, () -> dispersion.dryIn(dose));
        Dispersion turned = waterForSalt();
        work.slip(Slip.WATER_FOR_SALT, DispersionDose.DISPERSION_MASS, () -> turned.forDry(dry));
        work.slip(Slip.WATER_FOR_SALT, DispersionDose.WATER_MASS, () -> dry);
        work.slip(Slip.WATER_FOR_SALT, DispersionDose.DISPERSION_PHP, () -> turned.forDry(dose));
    }

    private void slipsFromDispersion(Php dose, Mass whole) {
        Mass divided = dispersion.forDry(whole);
        work.slip(Slip.DIVIDED_FOR_MULTIPLIED, DispersionDose.DISPERSION_MASS, () -> divided(dose));
        work.slip(Slip.DISPERSION_FOR_DRY, DispersionDose.DISPERSION_MASS, () -> divided);
        work.slip(Slip.DISPERSION_FOR_DRY, DispersionDose.DRY_MASS, () -> whole);
        work.slip(Slip.DIVIDED_FOR_MULTIPLIED, DispersionDose.DRY_MASS, () -> divided);
        work.slip(Slip.DISPERSION_FOR_DRY, DispersionDose.WATER_MASS, () -> dispersion.waterIn(divided));
        work.slip(Slip.DISPERSION_FOR_DRY, DispersionDose.DRY_PHP, () -> dose);
        work.slip(Slip.DIVIDED_FOR_MULTIPLIED, DispersionDose.DRY_PHP, () -> dispersion.forDry(dose));
        Dispersion turned = waterForSalt();
        work.slip(Slip.WATER_FOR_SALT, DispersionDose.DRY_MASS, () -> turned.dryIn(whole));
        work.slip(Slip.WATER_FOR_SALT, DispersionDose.WATER_MASS, () -> turned.waterIn(whole));
        work.slip(Slip.WATER_FOR_SALT, DispersionDose.DRY_PHP, () -> turned.dryIn(dose));
    }

    private Mass divided(Php dose) {
        return Mass.ofGrams(base.inGrams() / dose.asShareOfBase());
    }

    /** The dispersion as somebody sees it who takes its share of water for its share of salt. */
    private Dispersion waterForSalt() {
        return new Dispersion(Concentration.ofPercent(100 - dispersion.solids().inPercent()));
    }

    private Work.In solids() {
        return Work.In.of(dispersion.solids(), PERCENT);
    }
}
