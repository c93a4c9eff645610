package org.riseandgel.exercise;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;

/**
 * A value of the core as an exact number to judge against.
 *
 * <p>The core computes in double precision, whose last three or four of 16 figures are rounding noise: three tenths may
 * come out as 0.30000000000000004, and an answer exactly on the edge of its tolerance would fail by that. Twelve figures,
 * taken in the unit that is asked, hold everything that means something and make the edge the one that people see.
 */
final class CoreValue {
    private static final MathContext TWELVE = new MathContext(12, RoundingMode.HALF_EVEN);

    private CoreValue() {}

    /** The quantity in a unit of its kind, to twelve significant figures. */
    static Rational in(Unit unit, Quantity quantity) {
        return Rational.of(new BigDecimal(quantity.in(unit)).round(TWELVE));
    }
}
