package org.riseandgel.core.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * An exact fraction, numerator ÷ denominator, in lowest terms with a positive denominator.
 *
 * <p>What people type is judged in this arithmetic, so that an answer exactly on the edge of a tolerance is inside it.
 */
public record Rational(BigInteger numerator, BigInteger denominator) implements Comparable<Rational> {
    private static final int DOUBLE_BITS = 53;

    public static final Rational ZERO = of(0);
    public static final Rational ONE = of(1);

    public Rational {
        if (denominator.signum() == 0) {
            throw new ArithmeticException("denominator is 0, must be another number");
        }
        BigInteger common = numerator.gcd(denominator);
        if (denominator.signum() < 0) {
            common = common.negate();
        }
        if (!common.equals(BigInteger.ONE)) {
            numerator = numerator.divide(common);
            denominator = denominator.divide(common);
        }
    }

    /** The whole number. */
    public static Rational of(long whole) {
        return new Rational(BigInteger.valueOf(whole), BigInteger.ONE);
    }

    /** numerator ÷ denominator. */
    public static Rational of(long numerator, long denominator) {
        return new Rational(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }

    /** The decimal text exactly as written: "28.349523125". */
    public static Rational of(String decimal) {
        return of(new BigDecimal(decimal));
    }

    /** The decimal number exactly. */
    public static Rational of(BigDecimal decimal) {
        return decimal.scale() > 0
                ? new Rational(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()))
                : new Rational(decimal.toBigIntegerExact(), BigInteger.ONE);
    }

    /** The shortest decimal that stands for the double and no other, exactly: 0.1 is one tenth. */
    public static Rational ofPrinted(double value) {
        return of(Rounding.shortest(Checks.finite("value", value)));
    }

    public Rational plus(Rational other) {
        return new Rational(
                numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                denominator.multiply(other.denominator));
    }

    public Rational minus(Rational other) {
        return plus(other.negate());
    }

    public Rational times(Rational other) {
        return new Rational(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
    }

    public Rational dividedBy(Rational other) {
        return new Rational(numerator.multiply(other.denominator), denominator.multiply(other.numerator));
    }

    public Rational negate() {
        return new Rational(numerator.negate(), denominator);
    }

    public Rational abs() {
        return numerator.signum() < 0 ? negate() : this;
    }

    public int signum() {
        return numerator.signum();
    }

    @Override
    public int compareTo(Rational other) {
        return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
    }

    /** The nearest double, ties to even, for magnitudes from 10⁻³⁰⁰ to 10³⁰⁰. */
    public double toDouble() {
        if (numerator.bitLength() <= DOUBLE_BITS && denominator.bitLength() <= DOUBLE_BITS) {
            return numerator.doubleValue() / denominator.doubleValue();
        }
        int shift = Math.max(0, denominator.bitLength() - numerator.bitLength() + DOUBLE_BITS + 3);
        BigInteger[] parts = numerator.abs().shiftLeft(shift).divideAndRemainder(denominator);
        // A remainder sets the last of the spare bits, so that a little more than a tie is not taken for one.
        BigInteger quotient = parts[1].signum() == 0 ? parts[0] : parts[0].setBit(0);
        return numerator.signum() * Math.scalb(quotient.doubleValue(), -shift);
    }

    /** The decimal with the given number of places, half away from zero. */
    public BigDecimal toDecimal(int places) {
        return new BigDecimal(numerator).divide(new BigDecimal(denominator), places, RoundingMode.HALF_UP);
    }

    @Override
    public String toString() {
        return denominator.equals(BigInteger.ONE) ? numerator.toString() : numerator + "/" + denominator;
    }
}
