package org.riseandgel.exercise;

import java.util.List;
import org.riseandgel.core.quantity.Rational;

/** The decimal mark moved by one to three places: the number times 10 to the exponent. */
record PowerOfTen(int exponent, Rational factor) {
    static final List<PowerOfTen> ALL = List.of(of(-1), of(1), of(-2), of(2), of(-3), of(3));

    private static PowerOfTen of(int exponent) {
        long power = Math.round(StrictMath.pow(10, Math.abs(exponent)));
        return new PowerOfTen(exponent, exponent > 0 ? Rational.of(power) : Rational.of(1, power));
    }

    /** The number with its mark moved. */
    Rational shift(Rational number) {
        return number.times(factor);
    }

    /** The number whose mark was moved to give this one. */
    Rational unshift(Rational moved) {
        return moved.dividedBy(factor);
    }

    /** "10 times too large", "1000 times too small". */
    String words() {
        return exponent > 0 ? factor + " times too large" : factor.denominator() + " times too small";
    }
}
