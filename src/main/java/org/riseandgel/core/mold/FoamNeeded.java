package org.riseandgel.core.mold;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Volume;

/**
 * The foam to whip: cavity × (1 + overfill) × pieces ÷ (1 − bowl loss).
 *
 * @param cavity what one piece takes, more than zero
 * @param overfill what is to squeeze out all round, as a share of the cavity, 0 to 100 %
 * @param pieces 1 to 10,000
 * @param bowlLoss the share of the foam that stays in the bowl and on the tools, 0 to 90 %
 */
public record FoamNeeded(Volume cavity, Concentration overfill, int pieces, Concentration bowlLoss) {
    private static final int MOST_PIECES = 10_000;
    private static final double MOST_LOSS = 90;

    public FoamNeeded {
        Checks.positive("cavity in millilitres", cavity.inMillilitres());
        Checks.inRange("pieces", pieces, 1, MOST_PIECES);
        Checks.inRange("bowl loss in %", bowlLoss.inPercent(), 0, MOST_LOSS);
    }

    /** All the foam to whip. */
    public Volume total() {
        return toWhip(intoMolds(), bowlLoss);
    }

    /** The foam to whip so that some of it is left after the bowl loss: into the molds ÷ (1 − bowl loss), loss 0 to 90 %. */
    public static Volume toWhip(Volume intoMolds, Concentration bowlLoss) {
        Checks.inRange("bowl loss in %", bowlLoss.inPercent(), 0, MOST_LOSS);
        return Volume.ofMillilitres(intoMolds.inMillilitres() / (1 - bowlLoss.asFraction()));
    }

    /** The foam that goes into the molds, what is squeezed out included: cavity × (1 + overfill) × pieces. */
    public Volume intoMolds() {
        return Volume.ofMillilitres(cavity.inMillilitres() * (1 + overfill.asFraction()) * pieces);
    }

    /** How many whole pieces some foam gives: the largest number whose foam needed is at most that, from 0. */
    public int piecesFrom(Volume foam) {
        double each = new FoamNeeded(cavity, overfill, 1, bowlLoss).total().inMillilitres();
        double pieces = foam.inMillilitres() / each;
        // The foam for n pieces must give n pieces back, whatever the last bit of the division says.
        return (int) Math.min(MOST_PIECES, Math.floor(pieces * (1 + 1e-12)));
    }
}
