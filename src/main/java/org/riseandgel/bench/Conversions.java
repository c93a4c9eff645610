package org.riseandgel.bench;

import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.QuantityKind;
import org.riseandgel.core.quantity.Ratio;
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
        return shown.kind() == QuantityKind.TEMPERATURE
                ? work.step(
                        id(input),
                        label(input),
                        formula(shown, input.unit()),
                        "{}",
                        quantity,
                        input.unit(),
                        Work.In.of(quantity, shown))
                : scaled(id(input), label(input), quantity, shown, input.unit(), work);
    }

    /** A step from one unit into another that starts at the same zero: times or divided by how many make one. */
    static Quantity scaled(String id, String label, Quantity quantity, Unit from, Unit to, Work work) {
        double factor = from.factor().dividedBy(to.factor()).toDouble();
        boolean divides = factor < 1;
        return work.step(
                id,
                label,
                (divides ? "%1$s ÷ %1$s per %2$s" : "%1$s × %2$s per %1$s").formatted(from.symbol(), to.symbol()),
                divides ? "{} ÷ {}" : "{} × {}",
                quantity,
                to,
                Work.In.of(quantity, from),
                Work.In.of(Ratio.of(divides ? 1 / factor : factor), Unit.ONE));
    }

    private static String id(Input.Measured input) {
        return "convert-" + input.name();
    }

    private static String label(Input.Measured input) {
        return input.label() + " in " + input.unit().symbol();
    }

    private static String formula(Unit shown, Unit own) {
        return shown.symbol() + " into " + own.symbol();
    }
}
