package org.riseandgel.practice;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** How sure somebody was of an answer, in their own word. It never changes the mark. The names are stored and stay. */
public enum Confidence {
    GUESS("guess", "guessing"),
    FAIRLY("fairly sure", "fairly sure"),
    SURE("sure", "sure");

    private final String words;
    private final String asSaid;

    Confidence(String words, String asSaid) {
        this.words = words;
        this.asSaid = asSaid;
    }

    /** What a page says. */
    public String words() {
        return words;
    }

    /** What follows on "you were". */
    public String asSaid() {
        return asSaid;
    }

    /** What a form sends. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The confidence of that form value; empty for any other text. */
    public static Optional<Confidence> byCode(String code) {
        return Stream.of(values()).filter(one -> one.code().equals(code)).findFirst();
    }
}
