package org.riseandgel.core.batch;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Php;

/**
 * An agent that comes stirred into water. solids = dry ÷ dispersion, by mass, so dispersion = dry ÷ solids, and the rest of
 * it is water.
 *
 * @param solids more than 0 and at most 100 %
 */
public record Dispersion(Concentration solids) {
    public Dispersion {
        Checks.positive("solids in %", solids.inPercent());
    }

    /** The dispersion to weigh for some dry agent: dry ÷ solids. */
    public Mass forDry(Mass dry) {
        return Mass.ofGrams(dry.inGrams() / solids.asFraction());
    }

    /** The dry agent in some dispersion: dispersion × solids. */
    public Mass dryIn(Mass dispersion) {
        return Mass.ofGrams(dispersion.inGrams() * solids.asFraction());
    }

    /** The water that some dispersion brings: dispersion × (1 − solids). */
    public Mass waterIn(Mass dispersion) {
        return Mass.ofGrams(dispersion.inGrams() * (1 - solids.asFraction()));
    }

    /** The php of dispersion for a php of dry agent: php ÷ solids. */
    public Php forDry(Php dry) {
        return Php.ofPartsPerHundred(dry.inPartsPerHundred() / solids.asFraction());
    }

    /** The php of dry agent in a php of dispersion: php × solids. */
    public Php dryIn(Php dispersion) {
        return Php.ofPartsPerHundred(dispersion.inPartsPerHundred() * solids.asFraction());
    }

    /** The php of water that a php of dispersion brings: php × (1 − solids). */
    public Php waterIn(Php dispersion) {
        return Php.ofPartsPerHundred(dispersion.inPartsPerHundred() * (1 - solids.asFraction()));
    }

    /**
     * The same batch from dispersion instead of dry agent: the agent's row becomes dispersion, its range with it, and the
     * water row gives up what the dispersion brings. The sum of php stays the same.
     *
     * @param formula with the agent dry
     * @param agent the name of the agent's row
     * @param water the name of the water row
     * @throws OutOfRangeException when the dispersion brings more water than the formula has
     */
    public Formula in(Formula formula, String agent, String water) {
        Formula.Row dry = formula.row(agent);
        Php wet = forDry(dry.php());
        double left =
                formula.row(water).php().inPartsPerHundred() - waterIn(wet).inPartsPerHundred();
        if (left < 0) {
            throw OutOfRangeException.because(
                    "solids",
                    "solids are %s %%: the dispersion brings %s php of water, must bring at most the formula's %s php"
                            .formatted(
                                    solids.inPercent(),
                                    waterIn(wet).inPartsPerHundred(),
                                    formula.row(water).php().inPartsPerHundred()));
        }
        return new Formula(formula.rows().stream()
                .map(row -> row.ingredient().equals(agent)
                        ? wet(row)
                        : row.ingredient().equals(water) ? row.at(Php.ofPartsPerHundred(left)) : row)
                .toList());
    }

    private Formula.Row wet(Formula.Row dry) {
        return dry.hasRange()
                ? new Formula.Row(
                        dry.ingredient(), forDry(dry.php()), forDry(dry.low()), forDry(dry.high()), dry.base())
                : dry.at(forDry(dry.php()));
    }
}
