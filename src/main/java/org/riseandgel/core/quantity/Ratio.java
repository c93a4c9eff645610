package org.riseandgel.core.quantity;

/** How many times as much: a plain number, zero or more. */
public record Ratio(double asNumber) implements Quantity {
    public Ratio {
        Checks.notNegative("ratio", asNumber);
    }

    /** From a plain number. */
    public static Ratio of(double value) {
        return new Ratio(value);
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.RATIO;
    }

    @Override
    public double inBase() {
        return asNumber;
    }
}
