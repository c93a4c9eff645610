package org.riseandgel.bench;

import java.util.List;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/** Whether an input lies in its range, ends included, and the words that say so when it does not. */
final class InputRange {
    /** A limit that was typed in another unit may come back a hair beyond itself. */
    private static final double HAIR = 1e-12;

    private InputRange() {}

    /**
     * Checks every measured input of a calculation that was given.
     *
     * @throws OutOfRangeException with what, value and interval in the input's own unit
     */
    static void check(Calculation calculation, Given given) {
        QuantityText text = QuantityText.of(DecimalMark.POINT);
        for (Input input : calculation.inputs()) {
            if (input instanceof Input.Measured measured && given.quantities().containsKey(measured.name())) {
                check(measured, given.get(measured.name(), Quantity.class).in(measured.unit()), text);
            }
            if (input instanceof Input.Readings table) {
                check(table, given.rows(table.name()), text);
            }
        }
    }

    private static void check(Input.Readings table, List<Given.Row> rows, QuantityText text) {
        for (int line = 1; line <= rows.size(); line++) {
            for (int column = 0; column < table.columns().size(); column++) {
                Input.Measured cell = table.cell(line, column);
                Quantity quantity = rows.get(line - 1).get(column, Quantity.class);
                check(cell, quantity.in(cell.unit()), text);
            }
        }
    }

    /** Checks one input, the number being in the input's own unit. */
    static void check(Input.Measured input, double number, QuantityText text) {
        double slack = HAIR * Math.max(Math.abs(input.low()), Math.abs(input.high()));
        if (!(number >= input.low() - slack && number <= input.high() + slack)) {
            throw OutOfRangeException.because(input.label(), words(input, number, text));
        }
    }

    private static String words(Input.Measured input, double number, QuantityText text) {
        Unit unit = input.unit();
        return "%s is %s, must be from %s to %s"
                .formatted(
                        input.label(), text.of(number, unit), text.of(input.low(), unit), text.of(input.high(), unit));
    }
}
