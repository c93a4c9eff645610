package org.riseandgel.core.quantity;

/** A flow of air, a volume in a time, zero or more. */
public record Flow(double inCubicMetresPerHour) implements Quantity {
    public Flow {
        Checks.notNegative("flow in m³/h", inCubicMetresPerHour);
    }

    /** From a value in cubic metres per hour. */
    public static Flow ofCubicMetresPerHour(double value) {
        return new Flow(value);
    }

    /** From a value in litres per minute. */
    public static Flow ofLitresPerMinute(double value) {
        return new Flow(Unit.LITRE_PER_MINUTE.toBase(value));
    }

    /** The value in litres per minute. */
    public double inLitresPerMinute() {
        return Unit.LITRE_PER_MINUTE.fromBase(inCubicMetresPerHour);
    }

    /** From a value in cubic feet per minute. */
    public static Flow ofCubicFeetPerMinute(double value) {
        return new Flow(Unit.CUBIC_FOOT_PER_MINUTE.toBase(value));
    }

    /** The value in cubic feet per minute. */
    public double inCubicFeetPerMinute() {
        return Unit.CUBIC_FOOT_PER_MINUTE.fromBase(inCubicMetresPerHour);
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.FLOW;
    }

    @Override
    public double inBase() {
        return inCubicMetresPerHour;
    }
}
