package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.DEGREE_CELSIUS;
import static org.riseandgel.core.quantity.Unit.DEGREE_FAHRENHEIT;
import static org.riseandgel.core.quantity.Unit.FAHRENHEIT_STEP;
import static org.riseandgel.core.quantity.Unit.KELVIN;

import java.util.function.DoubleSupplier;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.TemperatureDifference;
import org.riseandgel.core.quantity.Unit;

/** From one temperature scale to another, over °C: the scales start at different places and step differently. */
final class TemperatureConversion {
    private final Quantity amount;
    private final Unit from;
    private final Unit to;
    private final Work work;

    TemperatureConversion(Quantity amount, Unit from, Unit to, Work work) {
        this.amount = amount;
        this.from = from;
        this.to = to;
        this.work = work;
    }

    Quantity write() {
        slips();
        Quantity celsius = intoCelsius();
        return to == DEGREE_CELSIUS ? celsius : outOfCelsius(celsius);
    }

    private Quantity intoCelsius() {
        String id = to == DEGREE_CELSIUS ? ConvertUnit.CONVERTED : "inCelsius";
        if (from == DEGREE_FAHRENHEIT) {
            Quantity above = work.step(
                    "aboveFreezing",
                    "°F above the freezing point of water",
                    "°F − 32",
                    "{} − 32",
                    TemperatureDifference.ofFahrenheitSteps(amount.in(DEGREE_FAHRENHEIT) - 32),
                    FAHRENHEIT_STEP,
                    Work.In.of(amount, from));
            return work.step(
                    id,
                    "In °C",
                    "(°F − 32) × 5 ÷ 9",
                    "{} × 5 ÷ 9",
                    Temperature.ofCelsius(above.inBase()),
                    DEGREE_CELSIUS,
                    Work.In.of(above, FAHRENHEIT_STEP));
        }
        if (from == KELVIN) {
            return work.step(
                    id, "In °C", "K − 273.15", "{} − 273.15", amount, DEGREE_CELSIUS, Work.In.of(amount, KELVIN));
        }
        return amount;
    }

    private Quantity outOfCelsius(Quantity celsius) {
        if (to == KELVIN) {
            return work.step(
                    ConvertUnit.CONVERTED,
                    "In K",
                    "°C + 273.15",
                    "{} + 273.15",
                    celsius,
                    KELVIN,
                    Work.In.of(celsius, DEGREE_CELSIUS));
        }
        Quantity steps = work.step(
                "scaled",
                "°F above the freezing point of water",
                "°C × 9 ÷ 5",
                "{} × 9 ÷ 5",
                new TemperatureDifference(celsius.inBase()),
                FAHRENHEIT_STEP,
                Work.In.of(celsius, DEGREE_CELSIUS));
        return work.step(
                ConvertUnit.CONVERTED,
                "In °F",
                "°C × 9 ÷ 5 + 32",
                "{} + 32",
                Temperature.ofCelsius(steps.inBase()),
                DEGREE_FAHRENHEIT,
                Work.In.of(steps, FAHRENHEIT_STEP));
    }

    private void slips() {
        double number = amount.in(from);
        if (from == DEGREE_FAHRENHEIT && to == DEGREE_CELSIUS) {
            slip(Slip.SCALE_WITHOUT_OFFSET, () -> number * 5 / 9);
            slip(Slip.OFFSET_AFTER_SCALE, () -> number * 5 / 9 - 32);
            slip(Slip.CONVERTED_BACKWARDS, () -> number * 9 / 5 + 32);
        }
        if (from == DEGREE_CELSIUS && to == DEGREE_FAHRENHEIT) {
            slip(Slip.SCALE_WITHOUT_OFFSET, () -> number * 9 / 5);
            slip(Slip.OFFSET_AFTER_SCALE, () -> (number + 32) * 9 / 5);
            slip(Slip.CONVERTED_BACKWARDS, () -> (number - 32) * 5 / 9);
        }
    }

    private void slip(Slip slip, DoubleSupplier wrong) {
        work.slip(slip, ConvertUnit.CONVERTED, () -> Quantity.of(wrong.getAsDouble(), to));
    }
}
