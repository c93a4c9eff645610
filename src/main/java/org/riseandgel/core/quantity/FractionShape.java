package org.riseandgel.core.quantity;

import java.math.BigInteger;

/** A fraction with or without whole number: 1/2, 1 1/2, 11/2. */
record FractionShape(String whole, String numerator, String denominator) implements Shape {
    private static final Rational LARGEST_DENOMINATOR = Rational.of(1_000_000);

    /** Refuses what is no fraction at all: nothing below the line, or a mixed number such as 1 3/2. */
    FractionShape {
        if (number(denominator).signum() == 0) {
            throw Refused.malformed("{typed} divides by zero. Write a fraction like 1/2.");
        }
        if (!whole.isEmpty() && number(numerator).compareTo(number(denominator)) >= 0) {
            throw Refused.malformed("In {typed} the fraction after the whole number is not below one."
                    + " Write the whole number up, like 2 1/2 for 1 3/2.");
        }
    }

    @Override
    public Rational value() {
        if (whole.length() > MOST_DIGITS || numerator.length() > MOST_DIGITS) {
            throw Refused.outOfRange("The fraction has more than 30 digits. Write fewer, like 1 1/2.");
        }
        Rational below = number(denominator);
        if (below.compareTo(LARGEST_DENOMINATOR) > 0) {
            throw Refused.outOfRange("The lower number of a fraction can be 1000000 at most. Write it like 1/64.");
        }
        Rational part = number(numerator).dividedBy(below);
        return whole.isEmpty() ? part : number(whole).plus(part);
    }

    @Override
    public Figures figures() {
        return Figures.EXACT;
    }

    private static Rational number(String digits) {
        return new Rational(new BigInteger(digits), BigInteger.ONE);
    }
}
