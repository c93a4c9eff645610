package org.riseandgel.core.quantity;

/** A temperature, at or above absolute zero (−273.15 °C). */
public record Temperature(double inCelsius) implements Quantity {
    public Temperature {
        Checks.inRange("temperature in °C", inCelsius, -273.15, Checks.LARGEST);
    }

    /** From a value in degrees Celsius. */
    public static Temperature ofCelsius(double value) {
        return new Temperature(value);
    }

    /** From a value in degrees Fahrenheit. */
    public static Temperature ofFahrenheit(double value) {
        return new Temperature(Unit.DEGREE_FAHRENHEIT.toBase(value));
    }

    /** The value in degrees Fahrenheit. */
    public double inFahrenheit() {
        return Unit.DEGREE_FAHRENHEIT.fromBase(inCelsius);
    }

    /** From a value in kelvins. */
    public static Temperature ofKelvins(double value) {
        return new Temperature(Unit.KELVIN.toBase(value));
    }

    /** The value in kelvins. */
    public double inKelvins() {
        return Unit.KELVIN.fromBase(inCelsius);
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.TEMPERATURE;
    }

    @Override
    public double inBase() {
        return inCelsius;
    }
}
