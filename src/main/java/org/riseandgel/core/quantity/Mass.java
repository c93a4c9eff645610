package org.riseandgel.core.quantity;

/** A mass, zero or more. */
public record Mass(double inGrams) implements Quantity {
    public Mass {
        Checks.notNegative("mass in grams", inGrams);
    }

    /** From a value in grams. */
    public static Mass ofGrams(double value) {
        return new Mass(value);
    }

    /** From a value in kilograms. */
    public static Mass ofKilograms(double value) {
        return new Mass(Unit.KILOGRAM.toBase(value));
    }

    /** The value in kilograms. */
    public double inKilograms() {
        return Unit.KILOGRAM.fromBase(inGrams);
    }

    /** From a value in ounces. */
    public static Mass ofOunces(double value) {
        return new Mass(Unit.OUNCE.toBase(value));
    }

    /** The value in ounces. */
    public double inOunces() {
        return Unit.OUNCE.fromBase(inGrams);
    }

    /** From a value in pounds. */
    public static Mass ofPounds(double value) {
        return new Mass(Unit.POUND.toBase(value));
    }

    /** The value in pounds. */
    public double inPounds() {
        return Unit.POUND.fromBase(inGrams);
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.MASS;
    }

    @Override
    public double inBase() {
        return inGrams;
    }
}
