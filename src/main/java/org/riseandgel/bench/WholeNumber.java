package org.riseandgel.bench;

import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Ratio;

/** Things that are counted, and never come in parts. */
final class WholeNumber {
    private static final double HAIR = 1e-9;

    private WholeNumber() {}

    /**
     * The count that was given.
     *
     * @param what the things, in the words of a refusal: "pieces"
     * @throws OutOfRangeException when it is no whole number
     */
    static int of(Given given, String name, String what) {
        double number = given.get(name, Ratio.class).asNumber();
        long whole = Math.round(number);
        if (Math.abs(number - whole) > HAIR) {
            throw OutOfRangeException.because(what, "%s are %s, must be a whole number".formatted(what, number));
        }
        return (int) whole;
    }
}
