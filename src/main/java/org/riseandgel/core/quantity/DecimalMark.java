package org.riseandgel.core.quantity;

/** The mark a school writes between whole and tenths. */
public enum DecimalMark {
    POINT('.'),
    COMMA(',');

    private final char mark;

    DecimalMark(char mark) {
        this.mark = mark;
    }

    /** The character itself. */
    public char mark() {
        return mark;
    }

    /** A decimal text written with a point, with this mark instead. */
    String in(String withPoint) {
        return withPoint.replace('.', mark);
    }
}
