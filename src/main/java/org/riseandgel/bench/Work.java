package org.riseandgel.bench;

import java.util.function.Supplier;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/** Where a calculation writes down its working. */
public interface Work {
    /**
     * A step of the working: stable id, label in words, formula in symbols, and its value. The formula with the numbers
     * in it is given as a text with {@code {}} for each number, filled from the quantities in the units given. A step
     * that gives a result bears the result's name.
     *
     * @return the value to go on with: exact normally, rounded when the run asks what early rounding would have given
     */
    <Q extends Quantity> Q step(String id, String label, String formula, String numbers, Q value, Unit unit, In... in);

    /** A result under its declared name; usually the value of the last step. */
    void result(String name, Quantity value);

    /** A result whose unit follows the inputs. */
    void result(String name, Quantity value, Unit unit);

    /** A finding in words, under its declared name. */
    void finding(String name, String words);

    /**
     * What somebody who makes this slip would get for a result, or for a step by its id. A slip that leads out of range,
     * to the right answer after all, or to the same answer as an earlier slip is left out.
     */
    void slip(Slip slip, String result, Supplier<? extends Quantity> wrong, String line);

    /** As {@link #slip(Slip, String, Supplier, String)} with the slip's own line. */
    default void slip(Slip slip, String result, Supplier<? extends Quantity> wrong) {
        slip(slip, result, wrong, slip.line());
    }

    /** Results that belong together. */
    void table(Outcome.Table table);

    /** A remark for the person: a limit that is near, an assumption that matters; {@code {}} for each number. */
    void note(String note, In... in);

    /** A number to be shown in a formula, in a unit. */
    record In(Quantity quantity, Unit unit) {
        public static In of(Quantity quantity, Unit unit) {
            return new In(quantity, unit);
        }
    }
}
