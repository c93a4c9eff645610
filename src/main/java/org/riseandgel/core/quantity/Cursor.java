package org.riseandgel.core.quantity;

/** A place in a text that only looks ahead and moves on. */
final class Cursor {
    static final char END = 0;

    private final String text;
    private int at;

    Cursor(String text) {
        this.text = text;
    }

    int at() {
        return at;
    }

    void moveTo(int place) {
        at = place;
    }

    String text() {
        return text;
    }

    char peek() {
        return peek(0);
    }

    char peek(int ahead) {
        return at + ahead < text.length() ? text.charAt(at + ahead) : END;
    }

    boolean atDigit() {
        return isDigit(peek());
    }

    boolean take(char sign) {
        if (peek() != sign) {
            return false;
        }
        at++;
        return true;
    }

    boolean take(String word) {
        if (!text.startsWith(word, at)) {
            return false;
        }
        at += word.length();
        return true;
    }

    void takeSpaces() {
        while (peek() == ' ') {
            at++;
        }
    }

    String takeDigits() {
        int start = at;
        while (atDigit()) {
            at++;
        }
        return text.substring(start, at);
    }

    String rest() {
        return text.substring(at);
    }

    static boolean isDigit(char sign) {
        return sign >= '0' && sign <= '9';
    }
}
