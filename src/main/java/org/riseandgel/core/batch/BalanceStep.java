package org.riseandgel.core.batch;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Php;

/**
 * What the step d of a balance's display leaves open when an ingredient is weighed after pressing tare: u = d ÷ √6, since
 * the tare is a reading too (rectangular distribution, JCGM 100:2008, 4.3.7). It covers the display alone: a worn balance
 * or a drip is on top.
 *
 * @param readability d, the step of the display, more than zero
 */
public record BalanceStep(Mass readability) {
    private static final double PERCENT = 100;
    private static final double HAIR = 1e-9;

    public BalanceStep {
        Checks.positive("readability in grams", readability.inGrams());
    }

    /** The standard uncertainty u = d ÷ √6 of one tared weighing. */
    public Mass uncertainty() {
        return WeighingPlan.readingUncertainty(readability, true);
    }

    /**
     * The mass rounded to the step, halves up.
     *
     * @throws OutOfRangeException when the mass is less than half a step, so that nothing can be weighed
     */
    public Mass weighable(Mass mass) {
        Mass rounded = WeighingPlan.rounded(mass, readability);
        if (rounded.inGrams() == 0) {
            throw OutOfRangeException.because(
                    "readability",
                    "readability is %s g, too coarse for %s g".formatted(readability.inGrams(), mass.inGrams()));
        }
        return rounded;
    }

    /** The largest whole number of steps that is no more than the mass, which may be none. */
    public Mass cutOff(Mass mass) {
        Mass rounded = WeighingPlan.rounded(mass, readability);
        boolean above = rounded.inGrams() > mass.inGrams() * (1 + HAIR);
        return above
                ? WeighingPlan.rounded(Mass.ofGrams(rounded.inGrams() - readability.inGrams()), readability)
                : rounded;
    }

    /** The share u ÷ m that an uncertainty is of a mass, both more than zero, u no more than m. */
    public static Concentration share(Mass uncertainty, Mass mass) {
        return Concentration.ofPercent(
                PERCENT * uncertainty.inGrams() / Checks.positive("mass in grams", mass.inGrams()));
    }

    /** The smallest mass u ÷ share of which an uncertainty is no more than a share, the share more than zero. */
    public static Mass leastMass(Mass uncertainty, Concentration share) {
        return Mass.ofGrams(uncertainty.inGrams() / Checks.positive("share", share.asFraction()));
    }

    /** The php = 100 × m ÷ base that a weighed mass really is, the base more than zero. */
    public static Php php(Mass weighed, Mass base) {
        return Php.ofPartsPerHundred(PERCENT * weighed.inGrams() / Checks.positive("base in grams", base.inGrams()));
    }
}
