package org.riseandgel.exercise;

/** How an answer was judged. The names are stored with answers and stay. */
public enum Verdict {
    /** Within tolerance. */
    RIGHT("Right"),
    /** The number is right in another unit of the same kind. */
    WRONG_UNIT("Right number, wrong unit"),
    /** What a named slip leads to. */
    SLIP("A known slip"),
    /** The right digits with the decimal mark moved by one to three places. */
    POWER_OF_TEN("Wrong power of ten"),
    /** What rounding before the last step leads to. */
    ROUNDED_EARLY("Rounded before the last step"),
    /** None of these. */
    WRONG("Not right");

    private final String title;

    Verdict(String title) {
        this.title = title;
    }

    /** The verdict in words. */
    public String title() {
        return title;
    }

    /** Whether the verdict's own words say already which slip it was. */
    public boolean isTheSlip() {
        return this == POWER_OF_TEN || this == ROUNDED_EARLY;
    }

    /** Whether the answer counts. */
    public boolean isRight() {
        return this == RIGHT;
    }
}
