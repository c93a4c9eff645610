package org.riseandgel.core.quantity;

/** Parts per hundred of base, by mass, zero or more. Not a percentage of the total. */
public record Php(double inPartsPerHundred) implements Quantity {
    public Php {
        Checks.notNegative("php", inPartsPerHundred);
    }

    /** From a value in parts per hundred. */
    public static Php ofPartsPerHundred(double value) {
        return new Php(value);
    }

    /** The same as a share of the base: 11 php is 0.11. */
    public double asShareOfBase() {
        return inPartsPerHundred / 100;
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.PHP;
    }

    @Override
    public double inBase() {
        return inPartsPerHundred;
    }
}
