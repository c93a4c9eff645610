package org.riseandgel.platform.web;

/** One line of text that people typed and that is safe to store and show. */
public final class PlainText {
    private PlainText() {}

    /** The text without outer spaces, with runs of spaces made one. */
    public static String tidy(String typed) {
        return typed.strip().replaceAll("\\s+", " ");
    }

    /**
     * Whether the text has 1 to {@code longest} characters and none that is invisible: control characters, and the
     * format characters that can turn the order of a line round.
     */
    public static boolean isLine(String text, int longest) {
        int length = text.codePointCount(0, text.length());
        return length >= 1 && length <= longest && text.codePoints().noneMatch(PlainText::isInvisible);
    }

    private static boolean isInvisible(int c) {
        int type = Character.getType(c);
        return type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.SURROGATE
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR
                || type == Character.UNASSIGNED;
    }
}
