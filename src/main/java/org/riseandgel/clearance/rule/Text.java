package org.riseandgel.clearance.rule;

/** Texts that must say something. */
final class Text {
    private static final int LONGEST = 200;

    private Text() {}

    static String need(String what, String text) {
        if (text == null || text.isBlank() || text.length() > LONGEST) {
            throw new IllegalArgumentException(
                    "The %s is missing or longer than %d characters.".formatted(what, LONGEST));
        }
        return text;
    }
}
