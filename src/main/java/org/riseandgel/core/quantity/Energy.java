package org.riseandgel.core.quantity;

/** An amount of energy, such as heat, zero or more. */
public record Energy(double inKilojoules) implements Quantity {
    public Energy {
        Checks.notNegative("energy in kilojoules", inKilojoules);
    }

    /** From a value in kilojoules. */
    public static Energy ofKilojoules(double value) {
        return new Energy(value);
    }

    /** From a value in watt hours. */
    public static Energy ofWattHours(double value) {
        return new Energy(Unit.WATT_HOUR.toBase(value));
    }

    /** The value in watt hours. */
    public double inWattHours() {
        return Unit.WATT_HOUR.fromBase(inKilojoules);
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.ENERGY;
    }

    @Override
    public double inBase() {
        return inKilojoules;
    }
}
