package org.riseandgel.exercise;

import java.math.BigDecimal;
import org.riseandgel.bench.Input;
import org.riseandgel.bench.QuantityText;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/** Whether what an exercise puts into a calculation can go in there at all. */
final class InputLimits {
    private static final double HAIR = 1e-9;

    private InputLimits() {}

    /** Notes a value of the wrong kind, or values that reach out of the input's range. */
    static void check(Input input, Unit unit, BigDecimal least, BigDecimal most, Field field) {
        if (!(input instanceof Input.Measured measured) || !checkKind(input, unit, field)) {
            return;
        }
        double slack = HAIR * Math.max(Math.abs(measured.low()), Math.abs(measured.high()));
        for (BigDecimal value : new BigDecimal[] {least, most}) {
            double own = measured.unit().fromBase(unit.toBase(value.doubleValue()));
            if (own < measured.low() - slack || own > measured.high() + slack) {
                field.problem("Can be %s %s, but %s goes from %s to %s."
                        .formatted(
                                value,
                                unit.code(),
                                input.name(),
                                limit(measured, measured.low()),
                                limit(measured, measured.high())));
                return;
            }
        }
    }

    /** Notes a unit of the wrong kind; a null unit is known only when the numbers are. */
    static boolean checkKind(Input input, Unit unit, Field field) {
        if (unit != null && input instanceof Input.Measured measured && measured.kind() != unit.kind()) {
            field.problem("Is %s, but %s is %s, such as a number of %s."
                    .formatted(
                            unit.kind().one(),
                            input.name(),
                            measured.kind().one(),
                            measured.unit().code()));
            return false;
        }
        return true;
    }

    private static String limit(Input.Measured input, double value) {
        return QuantityText.of(DecimalMark.POINT).of(Quantity.of(value, input.unit()), input.unit());
    }
}
