package org.riseandgel.core.quantity;

/** A volume, zero or more. */
public record Volume(double inMillilitres) implements Quantity {
    public Volume {
        Checks.notNegative("volume in millilitres", inMillilitres);
    }

    /** From a value in millilitres. */
    public static Volume ofMillilitres(double value) {
        return new Volume(value);
    }

    /** From a value in litres. */
    public static Volume ofLitres(double value) {
        return new Volume(Unit.LITRE.toBase(value));
    }

    /** The value in litres. */
    public double inLitres() {
        return Unit.LITRE.fromBase(inMillilitres);
    }

    /** From a value in cubic millimetres. */
    public static Volume ofCubicMillimetres(double value) {
        return new Volume(Unit.CUBIC_MILLIMETRE.toBase(value));
    }

    /** The value in cubic millimetres. */
    public double inCubicMillimetres() {
        return Unit.CUBIC_MILLIMETRE.fromBase(inMillilitres);
    }

    /** From a value in us fluid ounces. */
    public static Volume ofUsFluidOunces(double value) {
        return new Volume(Unit.US_FLUID_OUNCE.toBase(value));
    }

    /** The value in us fluid ounces. */
    public double inUsFluidOunces() {
        return Unit.US_FLUID_OUNCE.fromBase(inMillilitres);
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.VOLUME;
    }

    @Override
    public double inBase() {
        return inMillilitres;
    }
}
