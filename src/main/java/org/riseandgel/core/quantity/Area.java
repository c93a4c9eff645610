package org.riseandgel.core.quantity;

/** An area, zero or more. */
public record Area(double inSquareMillimetres) implements Quantity {
    public Area {
        Checks.notNegative("area in square millimetres", inSquareMillimetres);
    }

    /** From a value in square millimetres. */
    public static Area ofSquareMillimetres(double value) {
        return new Area(value);
    }

    /** From a value in square centimetres. */
    public static Area ofSquareCentimetres(double value) {
        return new Area(Unit.SQUARE_CENTIMETRE.toBase(value));
    }

    /** The value in square centimetres. */
    public double inSquareCentimetres() {
        return Unit.SQUARE_CENTIMETRE.fromBase(inSquareMillimetres);
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.AREA;
    }

    @Override
    public double inBase() {
        return inSquareMillimetres;
    }
}
