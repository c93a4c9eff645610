package org.riseandgel.core.quantity;

/** Takes one unsigned number, in any of its shapes, off a text. */
final class ShapeScanner {
    private final Cursor cursor;
    private final DecimalMark home;

    ShapeScanner(Cursor cursor, DecimalMark home) {
        this.cursor = cursor;
        this.home = home;
    }

    Shape scan() {
        Shape shape = number();
        if (shape instanceof DecimalShape decimal && decimal.exponent().isEmpty()) {
            return withInches(decimal);
        }
        return shape;
    }

    private Shape number() {
        FractionScanner fractions = new FractionScanner(cursor);
        if (fractions.glyphAt(0)) {
            return fractions.alone();
        }
        if (!NumeralScanner.startsAt(cursor)) {
            throw Refused.malformed("{typed} does not start with a number. Write it in digits, like 12{mark}5.");
        }
        Numeral numeral = new NumeralScanner(cursor, home).scan();
        return fractions.follows() ? fractions.after(numeral) : withPower(numeral);
    }

    private Shape withPower(Numeral numeral) {
        PowerScanner powers = new PowerScanner(cursor);
        if (numeral.isPlain() && numeral.digits().equals("10") && powers.powerFollows()) {
            return new DecimalShape(Numeral.one(), powers.power());
        }
        return new DecimalShape(numeral, powers.exponent());
    }

    private Shape withInches(DecimalShape feet) {
        int start = cursor.at();
        if (!takeFootMark() || !inchesFollow()) {
            cursor.moveTo(start);
            return feet;
        }
        Shape inches = number();
        if (!UnitWords.isInch(cursor.rest())) {
            throw Refused.malformed("{typed} has inches without an inch mark at its end. Write it like 2' 3\".");
        }
        cursor.moveTo(cursor.text().length());
        return new FeetAndInches(feet.numeral(), inches);
    }

    private boolean takeFootMark() {
        cursor.takeSpaces();
        if (cursor.peek(1) != cursor.peek() && (cursor.take('\'') || cursor.take('′'))) {
            return true;
        }
        boolean word = cursor.take("ft.") || cursor.take("ft") || cursor.take("feet") || cursor.take("foot");
        return word && (cursor.peek() == ' ' || cursor.peek() == '-');
    }

    private boolean inchesFollow() {
        if (!cursor.take('-')) {
            cursor.takeSpaces();
        }
        return NumeralScanner.startsAt(cursor) || new FractionScanner(cursor).glyphAt(0);
    }
}
