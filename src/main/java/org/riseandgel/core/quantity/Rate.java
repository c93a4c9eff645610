package org.riseandgel.core.quantity;

/** How many times in an hour, zero or more: the air changes of a room, the rate of a curve that levels off. */
public record Rate(double perHour) implements Quantity {
    public Rate {
        Checks.notNegative("rate per hour", perHour);
    }

    /** From a number of times per hour. */
    public static Rate ofPerHour(double value) {
        return new Rate(value);
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.RATE;
    }

    @Override
    public double inBase() {
        return perHour;
    }
}
