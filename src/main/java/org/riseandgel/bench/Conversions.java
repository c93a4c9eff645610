package org.riseandgel.bench;

import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Unit;

/** The first lines of a working: what was given in another unit is brought into the unit the formula works in. */
final class Conversions {
    private Conversions() {}

    static Given intoOwnUnits(Calculation calculation, Given given, Work work) {
        Given converted = given;
        for (Input input : calculation.inputs()) {
            if (input instanceof Input.Measured measured && isGivenOtherwise(measured, given)) {
                converted = converted.with(measured.name(), converted(measured, given, work), measured.unit());
            }
        }
        return converted;
    }

    private static boolean isGivenOtherwise(Input.Measured input, Given given) {
        Unit shown = given.units().get(input.name());
        return shown != null && shown != input.unit() && given.quantities().containsKey(input.name());
    }

    private static Quantity converted(Input.Measured input, Given given, Work work) {
        Quantity quantity = given.get(input.name(), Quantity.class);
        Unit shown = given.units().get(input.name());
        return work.step(
                "convert-" + input.name(),
                input.label() + " in " + input.unit().symbol(),
                formula(shown, input.unit()),
                "{}",
                quantity,
                input.unit(),
                Work.In.of(quantity, shown));
    }

    private static String formula(Unit shown, Unit own) {
        return shown.symbol() + " into " + own.symbol();
    }
}
