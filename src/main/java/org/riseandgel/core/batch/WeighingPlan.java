package org.riseandgel.core.batch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Rounding;

/**
 * A batch as a balance can weigh it: each mass rounded to the readability d, and what that does to the formula.
 *
 * <p>The standard uncertainty of one reading is d ÷ (2·√3), the rectangular distribution of width d (JCGM 100:2008,
 * 4.3.7); with the tare read as well it is d ÷ √6. That of php = 100·m ÷ b is 100 ÷ b · √(u² + (m ÷ b)²·u²), the two
 * masses read independently (JCGM 100:2008, 5.1.2). It covers the display alone: a worn balance or a drip is on top.
 */
public record WeighingPlan(Mass readability, List<Weighing> rows) {
    /** A double is good to more digits than this, and what lies beyond them is no reason to round down a half. */
    private static final MathContext SURE_DIGITS = new MathContext(12);

    private static final double HAIR = 1e-9;

    /**
     * One ingredient: its exact mass, the mass to weigh, the php that this mass and the base to weigh really have,
     * whether that is in the formula's range, and the standard uncertainties of the mass and of the php.
     */
    public record Weighing(
            Formula.Row row,
            Mass exact,
            Mass toWeigh,
            Php real,
            boolean inRange,
            Mass massUncertainty,
            Php phpUncertainty) {}

    public WeighingPlan {
        rows = List.copyOf(rows);
    }

    /**
     * The plan for a balance.
     *
     * @param readability the step of the balance's display, more than zero
     * @param tared whether each ingredient is weighed after pressing tare
     * @throws OutOfRangeException when the base is less than half a step, so that nothing can be weighed
     */
    public static WeighingPlan of(Batch batch, Mass readability, boolean tared) {
        double step = Checks.positive("readability in grams", readability.inGrams());
        double base = rounded(batch.base().inGrams(), step);
        if (base == 0) {
            throw OutOfRangeException.because(
                    "readability",
                    "readability is %s g, too coarse for %s g of base"
                            .formatted(step, batch.base().inGrams()));
        }
        double uncertainty = readingUncertainty(readability, tared).inGrams();
        return new WeighingPlan(
                readability,
                batch.portions().stream()
                        .map(portion -> weighing(portion, base, step, uncertainty))
                        .toList());
    }

    /** The standard uncertainty of one weighing: d ÷ (2·√3) without tare, d ÷ √6 with it. */
    public static Mass readingUncertainty(Mass readability, boolean tared) {
        return Mass.ofGrams(readability.inGrams() / StrictMath.sqrt(tared ? 6 : 12));
    }

    /** The mass rounded to the readability, halves up. */
    public static Mass rounded(Mass mass, Mass readability) {
        return Mass.ofGrams(rounded(mass.inGrams(), Checks.positive("readability in grams", readability.inGrams())));
    }

    private static Weighing weighing(Batch.Portion portion, double base, double step, double uncertainty) {
        double mass = rounded(portion.mass().inGrams(), step);
        double php = 100 * mass / base;
        Formula.Row row = portion.row();
        return new Weighing(
                row,
                portion.mass(),
                Mass.ofGrams(mass),
                Php.ofPartsPerHundred(php),
                php >= row.low().inPartsPerHundred() - HAIR && php <= row.high().inPartsPerHundred() + HAIR,
                Mass.ofGrams(uncertainty),
                Php.ofPartsPerHundred(row.base() ? 0 : phpUncertainty(mass, base, uncertainty)));
    }

    private static double phpUncertainty(double mass, double base, double uncertainty) {
        double share = mass / base;
        return 100 / base * uncertainty * StrictMath.sqrt(1 + share * share);
    }

    private static double rounded(double grams, double step) {
        Rational sure = Rational.of(new BigDecimal(grams).round(SURE_DIGITS));
        return Rounding.toReadability(sure, Rational.ofPrinted(step)).toDouble();
    }
}
