package org.riseandgel.core.quantity;

/** Takes a power of ten off a text: e3, x 10^3, ·10³. An exponent comes back as digits with at most a minus before them. */
final class PowerScanner {
    private static final String TIMES = "x×*·";
    private static final String RAISED_DIGITS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    private final Cursor cursor;

    PowerScanner(Cursor cursor) {
        this.cursor = cursor;
    }

    /** The exponent after a numeral; empty if there is none. */
    String exponent() {
        if (letterFollows()) {
            cursor.moveTo(cursor.at() + 1);
            return signedDigits();
        }
        return takeTimesTen() ? power() : "";
    }

    /** Whether the caret or a raised exponent comes next. */
    boolean powerFollows() {
        char sign = cursor.peek();
        return sign == '^' || isRaised(sign);
    }

    /** The exponent behind a ten. */
    String power() {
        return cursor.take('^') ? signedDigits() : raised();
    }

    private boolean letterFollows() {
        char letter = cursor.peek();
        return (letter == 'e' || letter == 'E') && !UnitWords.isLetter(cursor.peek(1));
    }

    private boolean takeTimesTen() {
        int start = cursor.at();
        cursor.takeSpaces();
        if (TIMES.indexOf(cursor.peek()) >= 0) {
            cursor.moveTo(cursor.at() + 1);
            cursor.takeSpaces();
            if (cursor.take("10") && powerFollows()) {
                return true;
            }
        }
        cursor.moveTo(start);
        return false;
    }

    private String signedDigits() {
        String sign = cursor.take('-') ? "-" : "";
        if (sign.isEmpty()) {
            cursor.take('+');
        }
        String digits = cursor.takeDigits();
        if (digits.isEmpty()) {
            throw missing();
        }
        if (Numeral.isMark(cursor.peek())) {
            throw Refused.malformed("The power of ten in {typed} is not a whole number. Write it like 1{mark}2e3.");
        }
        return sign + digits;
    }

    private String raised() {
        String sign = cursor.take('⁻') ? "-" : "";
        if (sign.isEmpty()) {
            cursor.take('⁺');
        }
        StringBuilder digits = new StringBuilder(sign);
        for (int digit = raisedDigit(); digit >= 0; digit = raisedDigit()) {
            digits.append(digit);
            cursor.moveTo(cursor.at() + 1);
        }
        if (digits.length() == sign.length()) {
            throw missing();
        }
        return digits.toString();
    }

    private int raisedDigit() {
        return RAISED_DIGITS.indexOf(cursor.peek());
    }

    private static boolean isRaised(char sign) {
        return RAISED_DIGITS.indexOf(sign) >= 0 || sign == '⁻' || sign == '⁺';
    }

    private static Refused missing() {
        return Refused.malformed("{typed} has no whole number as its power of ten. Write it like 1{mark}2e3.");
    }
}
