package org.riseandgel.platform.web;

/** Text that people typed and that is safe to store and show. */
public final class PlainText {
    /** What is said of a text with a character in it that nobody can see. */
    public static final String INVISIBLE = "There is an invisible character in the text. Type it again by hand.";

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

    /**
     * Whether a text of some lines has no control character but the ends of lines and tabs, and none that turns the order
     * of a line round. Characters that join letters or pictures may be in it.
     */
    public static boolean isPlain(String text) {
        return text.codePoints().allMatch(c -> c == '\n' || c == '\r' || c == '\t' || !isControl(c) && !turnsRound(c));
    }

    private static boolean isControl(int c) {
        int type = Character.getType(c);
        return type == Character.CONTROL || type == Character.SURROGATE;
    }

    /** The embeddings, overrides and isolates of Unicode's bidirectional algorithm (UAX #9). */
    private static boolean turnsRound(int c) {
        return c >= '\u202A' && c <= '\u202E' || c >= '\u2066' && c <= '\u2069';
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
