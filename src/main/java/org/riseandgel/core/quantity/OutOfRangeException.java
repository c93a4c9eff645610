package org.riseandgel.core.quantity;

/** A value lies outside the interval in which the calculation means anything. */
public final class OutOfRangeException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String what;

    OutOfRangeException(String what, String message) {
        super(message);
        this.what = what;
    }

    /** A refusal in our own words, for limits that are no plain interval. */
    public static OutOfRangeException because(String what, String message) {
        return new OutOfRangeException(what, message);
    }

    /** What was out of range, in the words of the caller: "inside height". */
    public String what() {
        return what;
    }
}
