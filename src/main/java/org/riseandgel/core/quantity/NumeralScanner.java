package org.riseandgel.core.quantity;

import java.util.ArrayList;
import java.util.List;

/** Takes the digits and separators of one numeral off a text. */
final class NumeralScanner {
    private final Cursor cursor;
    private final DecimalMark home;
    private final List<String> groups = new ArrayList<>(4);
    private final StringBuilder separators = new StringBuilder(4);

    NumeralScanner(Cursor cursor, DecimalMark home) {
        this.cursor = cursor;
        this.home = home;
    }

    /** Whether a numeral begins here: a digit, or a mark and a digit. */
    static boolean startsAt(Cursor cursor) {
        return cursor.atDigit() || Numeral.isMark(cursor.peek()) && Cursor.isDigit(cursor.peek(1));
    }

    Numeral scan() {
        int start = cursor.at();
        groups.add(cursor.takeDigits());
        while (atSeparator()) {
            separators.append(cursor.peek());
            cursor.moveTo(cursor.at() + 1);
            groups.add(cursor.takeDigits());
        }
        takeClosingPoint();
        boolean homeMark = separators.indexOf(String.valueOf(home.mark())) >= 0;
        return new Numeral(groups, separators.toString(), homeMark, start, cursor.at());
    }

    private boolean atSeparator() {
        char sign = cursor.peek();
        if (Numeral.isMark(sign)) {
            return Cursor.isDigit(cursor.peek(1));
        }
        return (sign == ' ' || sign == '\'') && threeDigitsFollow() && cursor.peek(4) != '/';
    }

    private boolean threeDigitsFollow() {
        return Cursor.isDigit(cursor.peek(1))
                && Cursor.isDigit(cursor.peek(2))
                && Cursor.isDigit(cursor.peek(3))
                && !Cursor.isDigit(cursor.peek(4));
    }

    private void takeClosingPoint() {
        if (!Numeral.isMark(cursor.peek())) {
            return;
        }
        if (Numeral.isMark(cursor.peek(1))) {
            throw Refused.malformed("{typed} has two decimal marks in a row. Write it like 12{mark}5.");
        }
        if (!cursor.take('.')) {
            throw Refused.malformed("{typed} has a comma with no digit after it. Write it like 12{mark}5.");
        }
        separators.append('.');
        groups.add("");
    }
}
