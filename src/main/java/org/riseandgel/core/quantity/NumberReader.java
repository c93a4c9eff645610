package org.riseandgel.core.quantity;

import java.util.List;

/**
 * Reads what a person typed as a number, with or without a unit. The one reader of the program: forms, the API, imports
 * and tests all use it.
 *
 * <p>It reads decimals with point or comma, digits grouped in threes, powers of ten, fractions, feet and inches. The home
 * mark decides only what cannot be told by shape: one to three digits, a mark and exactly three digits. There the home
 * mark is decimal and the other mark is asked about. The result is an exact fraction. A number with only a foot mark, 2',
 * is 2 ft; with an inch mark behind, 2' 3", it is 27 in.
 *
 * <p>Bounds: 64 characters, 30 digits, powers of ten from -30 to 30, denominators up to 1 000 000, and a magnitude of at
 * most 10¹² in the typed unit. The work grows with the length of the text and never with the size of the number. The
 * result depends on the text and the home mark alone, never on locale, clock or platform.
 */
public final class NumberReader {
    private static final int LONGEST = 64;
    private static final Rational LARGEST = Rational.of(1_000_000_000_000L);

    private final DecimalMark home;

    private NumberReader(DecimalMark home) {
        this.home = home;
    }

    /** A reader for a school that writes the given decimal mark. */
    public static NumberReader of(DecimalMark homeMark) {
        return new NumberReader(homeMark);
    }

    /** What the text says, or why it cannot be told; never throws. Null is read as an empty field. */
    public Reading read(String typed) {
        String raw = typed == null ? "" : typed;
        String shown = "";
        try {
            if (raw.codePointCount(0, raw.length()) > LONGEST) {
                throw Refused.as(
                        ReadingOutcome.TOO_LONG,
                        "That is longer than 64 characters. Write one number and its unit, like 12{mark}5 g.");
            }
            shown = Glyphs.plain(raw);
            return number(raw, shown);
        } catch (Refused why) {
            return why.reading(raw, shown, home);
        }
    }

    private Reading number(String raw, String text) {
        if (text.isEmpty()) {
            throw Refused.as(ReadingOutcome.EMPTY, "Nothing is written here yet. Write a number, like 12{mark}5.");
        }
        Cursor cursor = new Cursor(text);
        boolean negative = takeSign(cursor);
        Shape shape = new ShapeScanner(cursor, home).scan();
        cursor.takeSpaces();
        List<UnitWords.Meaning> meanings = meanings(shape, cursor.rest());
        Rational value = bounded(negative ? shape.value().negate() : shape.value());
        refuseEitherMark(text, shape);
        refuseEitherUnit(cursor.rest(), value, meanings);
        return Reading.ok(
                raw, value, meanings.isEmpty() ? null : meanings.get(0).unit(), shape.figures());
    }

    private static boolean takeSign(Cursor cursor) {
        boolean negative = cursor.peek() == '-';
        if (cursor.take('-') || cursor.take('+')) {
            cursor.take(' ');
        }
        return negative;
    }

    private static List<UnitWords.Meaning> meanings(Shape shape, String unit) {
        if (shape instanceof FeetAndInches) {
            return UnitWords.meanings("in");
        }
        return unit.isEmpty() ? List.of() : UnitWords.meanings(unit);
    }

    private static Rational bounded(Rational value) {
        if (value.abs().compareTo(LARGEST) > 0) {
            throw Refused.outOfRange(
                    "The number is too large. Write one of at most 1000000000000, or use a larger unit.");
        }
        return value;
    }

    private void refuseEitherMark(String text, Shape shape) {
        if (shape instanceof DecimalShape decimal && decimal.numeral().isAmbiguous()) {
            String tenths = decimal.numeral().rewritten(text, String.valueOf(home.mark()));
            String whole = decimal.numeral().rewritten(text, "");
            throw either(tenths, whole);
        }
    }

    private void refuseEitherUnit(String unit, Rational value, List<UnitWords.Meaning> meanings) {
        if (meanings.size() > 1) {
            List<String> choices = meanings.stream()
                    .map(meaning -> NumberWriter.of(home).exact(value.times(meaning.count())) + " "
                            + meaning.unit().symbol())
                    .toList();
            throw either(choices.get(0), choices.get(1));
        }
    }

    private static Refused either(String one, String other) {
        return Refused.ambiguous(
                "{typed} can be read as “" + one + "” or as “" + other + "”. Write the one you mean.",
                List.of(one, other));
    }
}
