package org.riseandgel.bench;

import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/** Where a calculation writes down its working. */
public interface Work {
    /**
     * A step of the working: stable id, label in words, formula in symbols, and its value. The formula with the numbers
     * in it is given as a text with {@code {}} for each number, filled from the quantities in the units given.
     *
     * @return the value to go on with: exact normally, rounded when the run asks what early rounding would have given
     */
    <Q extends Quantity> Q step(String id, String label, String formula, String numbers, Q value, Unit unit, In... in);

    /** A result under its declared name; usually the value of the last step. */
    void result(String name, Quantity value);

    /** What somebody who makes this slip would get for a result. Nothing when it cannot be computed. */
    void slip(Slip slip, String result, Quantity wrong);

    /** As {@link #slip(Slip, String, Quantity)} with a line of its own in place of the slip's usual one. */
    void slip(Slip slip, String result, Quantity wrong, String line);

    /** A remark for the person: a limit that is near, an assumption that matters. */
    void note(String note);

    /** A number to be shown in a formula, in a unit. */
    record In(Quantity quantity, Unit unit) {
        public static In of(Quantity quantity, Unit unit) {
            return new In(quantity, unit);
        }
    }
}
