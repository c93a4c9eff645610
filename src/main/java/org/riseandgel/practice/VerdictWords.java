package org.riseandgel.practice;

/** Verdicts in words, with the shape and the look that go with each; safety colours are kept for hazards. */
public enum VerdictWords {
    RIGHT("right", "right", "is-right"),
    WRONG_UNIT("right number, wrong unit", "unit", "is-slip"),
    SLIP("a slip", "slip", "is-slip"),
    POWER_OF_TEN("wrong power of ten", "slip", "is-slip"),
    ROUNDED_EARLY("rounded too early", "slip", "is-slip"),
    WRONG("not right", "wrong", "is-wrong");

    private final String words;
    private final String icon;
    private final String look;

    VerdictWords(String words, String icon, String look) {
        this.words = words;
        this.icon = icon;
        this.look = look;
    }

    /** The words for a stored verdict. */
    public static VerdictWords of(String verdict) {
        return valueOf(verdict);
    }

    public String words() {
        return words;
    }

    /** The shape, by its name in the icon sheet. */
    public String icon() {
        return icon;
    }

    /** The class of the panel. */
    public String look() {
        return look;
    }
}
