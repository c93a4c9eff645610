package org.riseandgel.core.quantity;

/** An amount of substance, zero or more: how many moles, whatever they weigh. */
public record Substance(double inMillimoles) implements Quantity {
    public Substance {
        Checks.notNegative("amount of substance in millimoles", inMillimoles);
    }

    /** From a value in millimoles. */
    public static Substance ofMillimoles(double value) {
        return new Substance(value);
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.SUBSTANCE;
    }

    @Override
    public double inBase() {
        return inMillimoles;
    }
}
