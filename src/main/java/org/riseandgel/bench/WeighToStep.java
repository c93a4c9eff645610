package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.GRAM;
import static org.riseandgel.core.quantity.Unit.PERCENT;
import static org.riseandgel.core.quantity.Unit.PHP;

import java.util.List;
import org.riseandgel.core.batch.BalanceStep;
import org.riseandgel.core.batch.Batch;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Php;

/** What the step of a balance does to one ingredient, and how little that balance weighs well enough. */
public final class WeighToStep implements Calculation {
    static final String BASE = "base";
    static final String INGREDIENT = "ingredientPhp";
    static final String READABILITY = ScaleBatch.READABILITY;
    static final String ALLOWED = "allowedShare";
    static final String EXACT = "exactMass";
    static final String TO_WEIGH = "massToWeigh";
    static final String REAL = "realPhp";
    static final String UNCERTAINTY = "uncertainty";
    static final String SHARE = "share";
    static final String LEAST = "leastMass";

    private static final String TURNED = "php is the ingredient over the base, not the base over the ingredient.";
    private static final double ROOT_TWO = StrictMath.sqrt(2);
    private static final double ROOT_SIX = StrictMath.sqrt(6);

    @Override
    public String id() {
        return "balance-step";
    }

    @Override
    public String title() {
        return "Step of the balance";
    }

    @Override
    public String purpose() {
        return "What your balance can weigh of one ingredient, how sure that is, and the least that it weighs well enough.";
    }

    @Override
    public Task task() {
        return Task.WEIGHING_OUT;
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                new Input.Measured(BASE, "Base", "The base in the batch.", GRAM, 1, 100_000, 150.0),
                new Input.Measured(
                        INGREDIENT,
                        "Ingredient",
                        "Its parts for 100 parts of base. 3.33 php is the water of the usual formula (common practice,"
                                + " no source).",
                        PHP,
                        0.01,
                        100,
                        3.33),
                BatchInputs.readability(),
                new Input.Measured(
                        ALLOWED,
                        "Uncertainty that you allow",
                        "As a share of the mass. 1 % is only an example.",
                        PERCENT,
                        0.01,
                        50,
                        1.0));
    }

    @Override
    public List<Result> results() {
        return List.of(
                new Result(EXACT, "Exact mass", GRAM, 0),
                new Result(TO_WEIGH, "To weigh", GRAM, 0),
                new Result(REAL, "That is", PHP, 0.01),
                new Result(UNCERTAINTY, "Standard uncertainty of the weighing", GRAM, 0),
                new Result(SHARE, "As a share of the mass", PERCENT, 0.01),
                new Result(LEAST, "Least mass that this balance weighs well enough", GRAM, 0.1));
    }

    @Override
    public String inputAt(String what) {
        return what.equals("readability") ? READABILITY : INGREDIENT;
    }

    @Override
    public void work(Given given, Work work) {
        Mass base = given.get(BASE, Mass.class);
        Php parts = given.get(INGREDIENT, Php.class);
        BalanceStep balance = new BalanceStep(given.get(READABILITY, Mass.class));
        Concentration allowed = given.get(ALLOWED, Concentration.class);
        Mass exact = exact(base, parts, work);
        Mass toWeigh = toWeigh(balance, exact, base, work);
        Mass uncertainty = uncertainty(balance, toWeigh, work);
        work.result(
                LEAST,
                work.step(
                        LEAST,
                        "Least mass that this balance weighs well enough",
                        "m = u ÷ allowed share",
                        "{} ÷ {}",
                        BalanceStep.leastMass(uncertainty, allowed),
                        GRAM,
                        Work.In.of(uncertainty, GRAM),
                        Work.In.of(allowed, PERCENT)));
        massSlips(base, parts, balance, work);
        uncertaintySlips(base, balance, BalanceStep.php(balance.weighable(exact), base), allowed, work);
        work.note("It covers the display alone: draught, a slope, a drip or a worn balance are on top.");
    }

    private static Mass exact(Mass base, Php parts, Work work) {
        Mass exact = work.step(
                EXACT,
                "Exact mass",
                "m = base × php ÷ 100",
                "{} × {} ÷ 100",
                Batch.portionOf(base, parts),
                GRAM,
                Work.In.of(base, GRAM),
                Work.In.of(parts, PHP));
        work.result(EXACT, exact);
        return exact;
    }

    private static Mass toWeigh(BalanceStep balance, Mass exact, Mass base, Work work) {
        Mass toWeigh = work.step(
                TO_WEIGH,
                "To weigh: the nearest that the display can show",
                "m, rounded to the step d",
                "{}, in steps of {}",
                balance.weighable(exact),
                GRAM,
                Work.In.of(exact, GRAM),
                Work.In.of(balance.readability(), GRAM));
        work.result(TO_WEIGH, toWeigh);
        work.result(
                REAL,
                work.step(
                        REAL,
                        "What that is in php",
                        "php = 100 × m ÷ base",
                        "100 × {} ÷ {}",
                        BalanceStep.php(toWeigh, base),
                        PHP,
                        Work.In.of(toWeigh, GRAM),
                        Work.In.of(base, GRAM)));
        return toWeigh;
    }

    private static Mass uncertainty(BalanceStep balance, Mass toWeigh, Work work) {
        Mass uncertainty = work.step(
                UNCERTAINTY,
                "Standard uncertainty, the tare read too",
                "u = d ÷ √6",
                "{} ÷ √6",
                balance.uncertainty(),
                GRAM,
                Work.In.of(balance.readability(), GRAM));
        work.result(UNCERTAINTY, uncertainty);
        work.result(
                SHARE,
                work.step(
                        SHARE,
                        "As a share of the mass",
                        "share = u ÷ m",
                        "{} ÷ {}",
                        BalanceStep.share(uncertainty, toWeigh),
                        PERCENT,
                        Work.In.of(uncertainty, GRAM),
                        Work.In.of(toWeigh, GRAM)));
        return uncertainty;
    }

    private static void massSlips(Mass base, Php parts, BalanceStep balance, Work work) {
        Mass divided = Mass.ofGrams(base.inGrams() / parts.asShareOfBase());
        work.slip(Slip.DIVIDED_FOR_MULTIPLIED, EXACT, () -> divided);
        work.slip(Slip.DIVIDED_FOR_MULTIPLIED, TO_WEIGH, () -> balance.weighable(divided));
        Mass exact = Batch.portionOf(base, parts);
        work.slip(Slip.NOT_ROUNDED, TO_WEIGH, () -> exact);
        work.slip(Slip.NOT_ROUNDED, REAL, () -> parts);
        work.slip(Slip.CUT_OFF, TO_WEIGH, () -> balance.cutOff(exact));
        work.slip(Slip.CUT_OFF, REAL, () -> BalanceStep.php(balance.cutOff(exact), base));
        work.slip(Slip.RATIO_TURNED_ROUND, REAL, () -> Php.ofPartsPerHundred(100 / parts.asShareOfBase()), TURNED);
    }

    private static void uncertaintySlips(Mass base, BalanceStep balance, Php real, Concentration allowed, Work work) {
        Mass right = balance.uncertainty();
        Mass weighed = Batch.portionOf(base, real);
        wrong(Slip.ONE_READING, Mass.ofGrams(right.inGrams() / ROOT_TWO), weighed, allowed, work);
        wrong(Slip.HALF_STEP, Mass.ofGrams(right.inGrams() * ROOT_SIX / 2), weighed, allowed, work);
        work.slip(Slip.WRONG_WHOLE, SHARE, () -> BalanceStep.share(right, base));
        work.slip(Slip.MULTIPLIED_FOR_DIVIDED, LEAST, () -> Mass.ofGrams(right.inGrams() * allowed.asFraction()));
    }

    private static void wrong(Slip slip, Mass uncertainty, Mass weighed, Concentration allowed, Work work) {
        work.slip(slip, UNCERTAINTY, () -> uncertainty);
        work.slip(slip, SHARE, () -> BalanceStep.share(uncertainty, weighed));
        work.slip(slip, LEAST, () -> BalanceStep.leastMass(uncertainty, allowed));
    }
}
