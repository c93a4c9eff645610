package org.riseandgel.core.quantity;

import java.util.Map;

/** Takes a fraction off a text: ½, 1/2, 1 1/2, 1-1/2, 1½, 11/2. */
final class FractionScanner {
    private static final Map<Character, String> GLYPHS = Map.ofEntries(
            Map.entry('½', "1/2"),
            Map.entry('⅓', "1/3"),
            Map.entry('⅔', "2/3"),
            Map.entry('¼', "1/4"),
            Map.entry('¾', "3/4"),
            Map.entry('⅕', "1/5"),
            Map.entry('⅖', "2/5"),
            Map.entry('⅗', "3/5"),
            Map.entry('⅘', "4/5"),
            Map.entry('⅙', "1/6"),
            Map.entry('⅚', "5/6"),
            Map.entry('⅐', "1/7"),
            Map.entry('⅛', "1/8"),
            Map.entry('⅜', "3/8"),
            Map.entry('⅝', "5/8"),
            Map.entry('⅞', "7/8"),
            Map.entry('⅑', "1/9"),
            Map.entry('⅒', "1/10"));

    private final Cursor cursor;

    FractionScanner(Cursor cursor) {
        this.cursor = cursor;
    }

    /** Whether a fraction in one character stands so many places ahead. */
    boolean glyphAt(int ahead) {
        return GLYPHS.containsKey(cursor.peek(ahead));
    }

    /** A fraction in one character without a whole number. */
    Shape alone() {
        return glyph("");
    }

    /** Whether what follows a numeral makes it part of a fraction. */
    boolean follows() {
        int join = joined();
        return glyphAt(join) || slashAfter(cursor.at()) || join > 0 && slashAfter(digitsEnd(cursor.at() + join));
    }

    /** The fraction of which the numeral is the upper or the whole number. */
    Shape after(Numeral numeral) {
        if (!numeral.isPlain()) {
            throw notWhole();
        }
        if (slashAfter(cursor.at())) {
            return slashed("", numeral.digits());
        }
        cursor.moveTo(cursor.at() + joined());
        return glyphAt(0) ? glyph(numeral.digits()) : slashed(numeral.digits(), cursor.takeDigits());
    }

    /** Length of the space or hyphen between a whole number and its fraction. */
    private int joined() {
        return cursor.peek() == ' ' || cursor.peek() == '-' ? 1 : 0;
    }

    private int digitsEnd(int from) {
        int end = from;
        while (end < cursor.text().length() && Cursor.isDigit(cursor.text().charAt(end))) {
            end++;
        }
        return end > from ? end : cursor.text().length();
    }

    private boolean slashAfter(int place) {
        String text = cursor.text();
        int slash = place < text.length() && text.charAt(place) == ' ' ? place + 1 : place;
        return slash < text.length() && text.charAt(slash) == '/' && !unitAfter(slash);
    }

    /** Whether the slash belongs to a unit: 6/h. */
    private boolean unitAfter(int slash) {
        String text = cursor.text();
        int next = slash + 1 < text.length() && text.charAt(slash + 1) == ' ' ? slash + 2 : slash + 1;
        return next < text.length() && UnitWords.isLetter(text.charAt(next));
    }

    private Shape slashed(String whole, String numerator) {
        cursor.takeSpaces();
        cursor.take('/');
        cursor.take(' ');
        String denominator = cursor.takeDigits();
        if (denominator.isEmpty() || Numeral.isMark(cursor.peek())) {
            throw notWhole();
        }
        return closed(new FractionShape(whole, numerator, denominator));
    }

    private Shape glyph(String whole) {
        String[] parts = GLYPHS.get(cursor.peek()).split("/");
        cursor.moveTo(cursor.at() + 1);
        return closed(new FractionShape(whole, parts[0], parts[1]));
    }

    private Shape closed(Shape fraction) {
        if (slashAfter(cursor.at())) {
            throw Refused.malformed("{typed} has two fractions in it. Write one, like 3/4.");
        }
        return fraction;
    }

    private static Refused notWhole() {
        return Refused.malformed("A fraction needs whole numbers above and below the line, and {typed} has others."
                + " Write it like 1 1/2, or use a decimal like 1{mark}5.");
    }
}
