package org.riseandgel.core.quantity;

/** A difference between two temperatures: 10 °C of difference are 18 °F of difference. */
public record TemperatureDifference(double inCelsiusSteps) implements Quantity {
    public TemperatureDifference {
        Checks.finite("temperature difference in °C", inCelsiusSteps);
    }

    /** From a value in celsius steps. */
    public static TemperatureDifference ofCelsiusSteps(double value) {
        return new TemperatureDifference(value);
    }

    /** From a value in fahrenheit steps. */
    public static TemperatureDifference ofFahrenheitSteps(double value) {
        return new TemperatureDifference(Unit.FAHRENHEIT_STEP.toBase(value));
    }

    /** The value in fahrenheit steps. */
    public double inFahrenheitSteps() {
        return Unit.FAHRENHEIT_STEP.fromBase(inCelsiusSteps);
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.TEMPERATURE_DIFFERENCE;
    }

    @Override
    public double inBase() {
        return inCelsiusSteps;
    }
}
