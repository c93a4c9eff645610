package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.MILLIGRAM_PER_CUBIC_METRE;
import static org.riseandgel.core.quantity.Unit.PERCENT;

import java.util.List;
import java.util.function.DoubleSupplier;
import org.riseandgel.core.air.Fluorosilicate;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Mass;

/** How much fluoride a mass of the gelling salt holds. */
public final class CountFluoride implements Calculation {
    static final String FLUORIDE = "fluoride";
    static final String SHARE = "fluorideShare";
    static final String LIMIT_AS_SALT = "limitAsSalt";

    @Override
    public String id() {
        return "fluoride-content";
    }

    @Override
    public String title() {
        return "Fluoride in the salt";
    }

    @Override
    public String purpose() {
        return "How much fluoride is in the gelling salt: that is what limits are written for.";
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
                new Result(FLUORIDE, "Fluoride, as F", GRAM, 0.001),
                new Result(SHARE, "Share of the pure salt that is fluoride", PERCENT, 0.1),
                new Result(LIMIT_AS_SALT, "The limit for fluoride, counted as salt", MILLIGRAM_PER_CUBIC_METRE, 0.01));
    }

    @Override
    public void work(Given given, Work work) {
        Mass pure = SaltInputs.pure(given, work);
        Concentration share = SaltInputs.fluorideShare(SaltInputs.molarMass(SaltInputs.salt(given), work), work);
        Mass fluoride = work.step(
                FLUORIDE,
                "Fluoride",
                "m × w",
                "{} × {}",
                Mass.ofGrams(pure.inGrams() * share.asFraction()),
                GRAM,
                Work.In.of(pure, GRAM),
                Work.In.of(share, PERCENT));
        work.result(FLUORIDE, fluoride);
        work.result(SHARE, share);
        work.result(
                LIMIT_AS_SALT,
                work.step(
                        LIMIT_AS_SALT,
                        "The limit, counted as pure salt",
                        "as salt = limit as F ÷ w",
                        "{} ÷ {}",
                        SaltInputs.inAir(SaltInputs.milligrams(SaltInputs.limit()) / share.asFraction()),
                        MILLIGRAM_PER_CUBIC_METRE,
                        SaltInputs.in(SaltInputs.limit()),
                        Work.In.of(share, PERCENT)));
        slips(given, work, pure.inGrams(), share.asFraction());
        SaltInputs.limitNote(work);
        work.note("All six fluorines count, since all of them come free when the salt comes apart in water.");
    }

    @Override
    public List<String> cautions() {
        return List.of(GelInputs.CAUTION);
    }

    private static void slips(Given given, Work work, double pure, double share) {
        mass(work, Slip.SALT_FOR_FLUORIDE, () -> pure);
        mass(work, Slip.DIVIDED_FOR_MULTIPLIED, () -> pure / share);
        mass(work, Slip.ONE_ATOM, () -> pure * share / Fluorosilicate.FLUORINES);
        mass(
                work,
                Slip.PURITY_LEFT_OUT,
                () -> given.get(SaltInputs.MASS, Mass.class).inGrams() * share);
        double limit = SaltInputs.milligrams(SaltInputs.limit());
        air(work, Slip.SALT_FOR_FLUORIDE, () -> limit);
        air(work, Slip.MULTIPLIED_FOR_DIVIDED, () -> limit * share);
        air(work, Slip.ONE_ATOM, () -> limit * Fluorosilicate.FLUORINES / share);
        work.slip(Slip.ONE_ATOM, SHARE, () -> Concentration.ofPercent(100 * share / Fluorosilicate.FLUORINES));
    }

    private static void air(Work work, Slip slip, DoubleSupplier milligrams) {
        work.slip(slip, LIMIT_AS_SALT, () -> SaltInputs.inAir(milligrams.getAsDouble()));
    }

    private static void mass(Work work, Slip slip, DoubleSupplier grams) {
        work.slip(slip, FLUORIDE, () -> Mass.ofGrams(grams.getAsDouble()));
    }
}
