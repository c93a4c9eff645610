package org.riseandgel.core.quantity;

/** A share of the whole by mass, 0 to 100 %. */
public record Concentration(double inPercent) implements Quantity {
    public Concentration {
        Checks.inRange("concentration in %", inPercent, 0, 100);
    }

    /** From a value in percent. */
    public static Concentration ofPercent(double value) {
        return new Concentration(value);
    }

    /** The same as a fraction: 25 % is 0.25. */
    public double asFraction() {
        return inPercent / 100;
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.CONCENTRATION;
    }

    @Override
    public double inBase() {
        return inPercent;
    }
}
