package org.riseandgel.core.quantity;

/** A density, more than zero. */
public record Density(double inGramsPerMillilitre) implements Quantity {
    public Density {
        Checks.positive("density in grams per millilitre", inGramsPerMillilitre);
    }

    /** From a value in grams per millilitre. */
    public static Density ofGramsPerMillilitre(double value) {
        return new Density(value);
    }

    /** From a value in kilograms per cubic metre. */
    public static Density ofKilogramsPerCubicMetre(double value) {
        return new Density(Unit.KILOGRAM_PER_CUBIC_METRE.toBase(value));
    }

    /** The value in kilograms per cubic metre. */
    public double inKilogramsPerCubicMetre() {
        return Unit.KILOGRAM_PER_CUBIC_METRE.fromBase(inGramsPerMillilitre);
    }

    /** From a value in pounds per cubic foot. */
    public static Density ofPoundsPerCubicFoot(double value) {
        return new Density(Unit.POUND_PER_CUBIC_FOOT.toBase(value));
    }

    /** The value in pounds per cubic foot. */
    public double inPoundsPerCubicFoot() {
        return Unit.POUND_PER_CUBIC_FOOT.fromBase(inGramsPerMillilitre);
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.DENSITY;
    }

    @Override
    public double inBase() {
        return inGramsPerMillilitre;
    }
}
