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

    /** The shortest decimal that a double prints as, exactly: 0.1 is one tenth. */
    public static Rational ofPrinted(double value) {
        return of(new BigDecimal(Double.toString(Checks.finite("value", value))));
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

    /** The nearest double. */
    public double toDouble() {
        return toDecimal(40).doubleValue();
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
