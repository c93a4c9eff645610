package org.riseandgel.core.quantity;

/** A stretch of time, zero or more. */
public record TimeSpan(double inSeconds) implements Quantity {
    public TimeSpan {
        Checks.notNegative("duration in seconds", inSeconds);
    }

    /** From a value in seconds. */
    public static TimeSpan ofSeconds(double value) {
        return new TimeSpan(value);
    }

    /** From a value in minutes. */
    public static TimeSpan ofMinutes(double value) {
        return new TimeSpan(Unit.MINUTE.toBase(value));
    }

    /** The value in minutes. */
    public double inMinutes() {
        return Unit.MINUTE.fromBase(inSeconds);
    }

    /** From a value in hours. */
    public static TimeSpan ofHours(double value) {
        return new TimeSpan(Unit.HOUR.toBase(value));
    }

    /** The value in hours. */
    public double inHours() {
        return Unit.HOUR.fromBase(inSeconds);
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.DURATION;
    }

    @Override
    public double inBase() {
        return inSeconds;
    }
}
