package org.riseandgel.core.quantity;

/** A length, zero or more. */
public record Length(double inMillimetres) implements Quantity {
    public Length {
        Checks.notNegative("length in millimetres", inMillimetres);
    }

    /** From a value in millimetres. */
    public static Length ofMillimetres(double value) {
        return new Length(value);
    }

    /** From a value in centimetres. */
    public static Length ofCentimetres(double value) {
        return new Length(Unit.CENTIMETRE.toBase(value));
    }

    /** The value in centimetres. */
    public double inCentimetres() {
        return Unit.CENTIMETRE.fromBase(inMillimetres);
    }

    /** From a value in metres. */
    public static Length ofMetres(double value) {
        return new Length(Unit.METRE.toBase(value));
    }

    /** The value in metres. */
    public double inMetres() {
        return Unit.METRE.fromBase(inMillimetres);
    }

    /** From a value in inches. */
    public static Length ofInches(double value) {
        return new Length(Unit.INCH.toBase(value));
    }

    /** The value in inches. */
    public double inInches() {
        return Unit.INCH.fromBase(inMillimetres);
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.LENGTH;
    }

    @Override
    public double inBase() {
        return inMillimetres;
    }
}
