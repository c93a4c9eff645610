package org.riseandgel.core.quantity;

import java.math.BigInteger;

/** A numeral, with or without a power of ten: 12.5, 1 234, 1.2e3. */
record DecimalShape(Numeral numeral, String exponent) implements Shape {
    private static final int LARGEST_EXPONENT = 30;

    @Override
    public Rational value() {
        String digits = numeral.digits();
        if (digits.length() > MOST_DIGITS) {
            throw Refused.outOfRange("The number has more than 30 digits. Write fewer, like 12{mark}5.");
        }
        int power = power() - numeral.places();
        BigInteger scale = BigInteger.TEN.pow(Math.abs(power));
        BigInteger whole = new BigInteger(digits);
        return power < 0 ? new Rational(whole, scale) : new Rational(whole.multiply(scale), BigInteger.ONE);
    }

    @Override
    public Figures figures() {
        return Figures.of(numeral.digits(), numeral.hasMark());
    }

    private int power() {
        int power = 0;
        for (int at = 0; at < exponent.length(); at++) {
            if (Cursor.isDigit(exponent.charAt(at))) {
                power = Math.min(LARGEST_EXPONENT + 1, power * 10 + exponent.charAt(at) - '0');
            }
        }
        if (power > LARGEST_EXPONENT) {
            throw Refused.outOfRange("The power of ten is too large. It can be from -30 to 30, as in 1{mark}2e3.");
        }
        return exponent.startsWith("-") ? -power : power;
    }
}
