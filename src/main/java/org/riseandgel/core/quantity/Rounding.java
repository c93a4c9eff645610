package org.riseandgel.core.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/** Rounding with ties away from zero, always on the decimal that people see. */
public final class Rounding {
    private static final int FEW_PLACES = 9;
    private static final int EXACT_DIGITS = 15;
    private static final int ENOUGH_DIGITS = 17;

    private Rounding() {}

    /** The value rounded to 1 to 17 significant figures; NaN and infinities are refused. */
    public static double toSignificant(double value, int significant) {
        Checks.inRange("significant figures", significant, 1, ENOUGH_DIGITS);
        return shortest(value)
                .round(new MathContext(significant, RoundingMode.HALF_UP))
                .doubleValue();
    }

    /** The nearest whole multiple of a readability, which is more than zero. */
    public static Rational toReadability(Rational value, Rational readability) {
        if (readability.signum() <= 0) {
            throw OutOfRangeException.because(
                    "readability", "readability is %s, must be more than 0".formatted(readability));
        }
        return Rational.of(value.dividedBy(readability).toDecimal(0)).times(readability);
    }

    /**
     * The shortest decimal that stands for this double and no other; of several, the nearest. Unlike
     * {@link Double#toString(double)} it is the same on every release of the platform.
     */
    static BigDecimal shortest(double value) {
        if (!Double.isFinite(value)) {
            throw OutOfRangeException.because("value", "value is " + value + ", must be a finite number");
        }
        double ten = 1;
        for (int places = 0; places <= FEW_PLACES && Math.abs(value * ten) < 1e15; places++, ten *= 10) {
            long whole = Math.round(value * ten);
            // Both parts are exact, so the division rounds once: the decimal stands for the value if it gives it back.
            if (whole / ten == value) {
                return BigDecimal.valueOf(whole, places);
            }
        }
        return shortestOfMany(value);
    }

    private static BigDecimal shortestOfMany(double value) {
        BigDecimal exact = new BigDecimal(value);
        for (int digits = EXACT_DIGITS; digits < ENOUGH_DIGITS; digits++) {
            BigDecimal candidate = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (candidate.doubleValue() == value) {
                return stripped(candidate);
            }
        }
        return stripped(exact.round(new MathContext(ENOUGH_DIGITS, RoundingMode.HALF_EVEN)));
    }

    /** Whether a finite decimal holds the value: nothing but twos and fives below the line. */
    static boolean terminates(Rational value) {
        BigInteger rest = value.denominator();
        rest = rest.shiftRight(rest.getLowestSetBit());
        while (!rest.equals(BigInteger.ONE)) {
            BigInteger[] fifth = rest.divideAndRemainder(BigInteger.valueOf(5));
            if (fifth[1].signum() != 0) {
                return false;
            }
            rest = fifth[0];
        }
        return true;
    }

    /** The decimal that holds a value for which {@link #terminates} is true. */
    static BigDecimal exactDecimal(Rational value) {
        return stripped(new BigDecimal(value.numerator()).divide(new BigDecimal(value.denominator())));
    }

    private static BigDecimal stripped(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
