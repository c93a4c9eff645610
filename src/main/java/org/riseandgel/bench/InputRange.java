package org.riseandgel.bench;

import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/** Whether an input lies in its range, ends included, and the words that say so when it does not. */
final class InputRange {
    /** A limit that was typed in another unit may come back a hair beyond itself. */
    private static final double HAIR = 1e-12;

    private InputRange() {}

    /** Checks every measured input of a calculation that was given. */
    static void check(Calculation calculation, Given given) {
        QuantityText text = QuantityText.of(DecimalMark.POINT);
        for (Input input : calculation.inputs()) {
            if (input instanceof Input.Measured measured && given.quantities().containsKey(measured.name())) {
                check(measured, given.get(measured.name(), Quantity.class), text);
            }
        }
    }

    /**
     * Checks one input.
     *
     * @throws OutOfRangeException with what, value and interval in the input's own unit
     */
    static void check(Input.Measured input, Quantity quantity, QuantityText text) {
        if (quantity.kind() != input.kind()) {
            throw OutOfRangeException.because(
                    input.label(),
                    "%s is a %s, must be a %s"
                            .formatted(
                                    input.label(),
                                    quantity.kind().words(),
                                    input.kind().words()));
        }
        double value = quantity.in(input.unit());
        double slack = HAIR * Math.max(Math.abs(input.low()), Math.abs(input.high()));
        if (!(value >= input.low() - slack && value <= input.high() + slack)) {
            throw OutOfRangeException.because(input.label(), words(input, quantity, text));
        }
    }

    private static String words(Input.Measured input, Quantity quantity, QuantityText text) {
        Unit unit = input.unit();
        return "%s is %s, must be from %s to %s"
                .formatted(
                        input.label(),
                        text.of(quantity, unit),
                        text.of(Quantity.of(input.low(), unit), unit),
                        text.of(Quantity.of(input.high(), unit), unit));
    }
}
