package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.MILLIMOLE;
import static org.riseandgel.core.quantity.Unit.ONE;

import java.util.List;
import java.util.function.DoubleSupplier;
import org.riseandgel.core.air.Fluorosilicate;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Substance;

/** How much acid a mass of the gelling salt sets free in water: that is what gels the foam. */
public final class CountAcid implements Calculation {
    static final String ACID = "acid";
    static final String AMOUNT = "saltAmount";
    static final String SILICA = "silica";

    private static final double MILLIMOLES_PER_MOLE = 1000;

    @Override
    public String id() {
        return "acid-set-free";
    }

    @Override
    public String title() {
        return "Acid from the salt";
    }

    @Override
    public String purpose() {
        return "How much acid the gelling salt sets free when all of it comes apart in water: that is what sets the foam.";
    }

    @Override
    public Task task() {
        return Task.SALT;
    }

    @Override
    public List<Input> inputs() {
        return List.of(SaltInputs.salt(), SaltInputs.mass(), SaltInputs.purity());
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(ACID, "Acid set free, H⁺", MILLIMOLE, 0.1),
                new Result(AMOUNT, "Amount of salt", MILLIMOLE, 0.1),
                new Result(SILICA, "Silica left behind, SiO₂", GRAM, 0.01));
    }

    @Override
    public void work(Given given, Work work) {
        Fluorosilicate salt = SaltInputs.salt(given);
        Mass pure = SaltInputs.pure(given, work);
        Ratio molarMass = SaltInputs.molarMass(salt, work);
        Substance amount = work.step(
                AMOUNT,
                "Amount of salt",
                "n = 1000 × m ÷ M",
                "1000 × {} ÷ {}",
                Substance.ofMillimoles(MILLIMOLES_PER_MOLE * pure.inGrams() / molarMass.asNumber()),
                MILLIMOLE,
                Work.In.of(pure, GRAM),
                Work.In.of(molarMass, ONE));
        Substance acid = work.step(
                ACID,
                "Acid: four H⁺ from each",
                "SiF₆²⁻ + 2 H₂O → SiO₂ + 4 H⁺ + 6 F⁻, so 4 × n",
                "{} × {}",
                Substance.ofMillimoles(Fluorosilicate.ACIDS * amount.inMillimoles()),
                MILLIMOLE,
                SaltInputs.number(Fluorosilicate.ACIDS),
                Work.In.of(amount, MILLIMOLE));
        Mass silica = work.step(
                SILICA,
                "Silica: one SiO₂ from each",
                "n × M(SiO₂) ÷ 1000",
                "{} × {} ÷ 1000",
                Mass.ofGrams(amount.inMillimoles() * Fluorosilicate.SILICA / MILLIMOLES_PER_MOLE),
                GRAM,
                Work.In.of(amount, MILLIMOLE),
                SaltInputs.number(Fluorosilicate.SILICA));
        work.result(ACID, acid);
        work.result(AMOUNT, amount);
        work.result(SILICA, silica);
        slips(given, work, pure.inGrams(), molarMass.asNumber());
        work.note("Not all of the salt comes apart while the foam sets: this is the most there can be.");
        work.note("Acids free hydrogen fluoride from the salt: keep the two apart.");
    }

    @Override
    public List<String> cautions() {
        return List.of(GelInputs.CAUTION);
    }

    private static void slips(Given given, Work work, double pure, double molarMass) {
        double amount = MILLIMOLES_PER_MOLE * pure / molarMass;
        double unclean =
                MILLIMOLES_PER_MOLE * given.get(SaltInputs.MASS, Mass.class).inGrams() / molarMass;
        slip(work, Slip.ONE_ATOM, ACID, () -> amount);
        slip(work, Slip.DIVIDED_FOR_MULTIPLIED, ACID, () -> amount / Fluorosilicate.ACIDS);
        slip(work, Slip.PURITY_LEFT_OUT, ACID, () -> Fluorosilicate.ACIDS * unclean);
        slip(work, Slip.MULTIPLIED_FOR_DIVIDED, AMOUNT, () -> MILLIMOLES_PER_MOLE * pure * molarMass);
        slip(work, Slip.PURITY_LEFT_OUT, AMOUNT, () -> unclean);
    }

    private static void slip(Work work, Slip slip, String result, DoubleSupplier millimoles) {
        work.slip(slip, result, () -> Substance.ofMillimoles(millimoles.getAsDouble()));
    }
}
