package org.riseandgel.bench;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.core.quantity.Volume;

/** A unit overlooked: the number shown in one unit is worked with as if it were in another. */
record Misreading(Slip slip, Unit shown, Unit taken, DoubleFunction<Quantity> reading) {
    static final List<Misreading> ALL = List.of(
            as(Slip.OUNCES_FOR_GRAMS, Unit.OUNCE, Unit.GRAM),
            as(Slip.POUNDS_FOR_GRAMS, Unit.POUND, Unit.GRAM),
            as(Slip.INCHES_FOR_CENTIMETRES, Unit.INCH, Unit.CENTIMETRE),
            as(Slip.INCHES_FOR_MILLIMETRES, Unit.INCH, Unit.MILLIMETRE),
            as(Slip.CUBIC_INCHES_FOR_MILLILITRES, Unit.CUBIC_INCH, Unit.MILLILITRE),
            new Misreading(
                    Slip.ONE_SIDE_FOR_CUBE,
                    Unit.CUBIC_INCH,
                    Unit.MILLILITRE,
                    number -> Volume.ofMillilitres(number * 2.54)),
            new Misreading(
                    Slip.SECONDS_AS_HUNDREDTHS, Unit.SECOND, Unit.MINUTE, number -> TimeSpan.ofMinutes(number / 100)),
            as(Slip.FAHRENHEIT_FOR_CELSIUS, Unit.DEGREE_FAHRENHEIT, Unit.DEGREE_CELSIUS),
            new Misreading(
                    Slip.SCALE_WITHOUT_OFFSET,
                    Unit.DEGREE_FAHRENHEIT,
                    Unit.DEGREE_CELSIUS,
                    number -> Temperature.ofCelsius(number * 5 / 9)));

    /** The inputs as misread, every one that was shown in the unit; nothing when none was. */
    Optional<Given> of(Given given) {
        Given misread = given;
        for (String name : given.quantities().keySet()) {
            if (given.units().get(name) == shown) {
                double number = given.get(name, Quantity.class).in(shown);
                misread = misread.with(name, reading.apply(number), taken);
            }
        }
        return misread == given ? Optional.empty() : Optional.of(misread);
    }

    private static Misreading as(Slip slip, Unit shown, Unit taken) {
        return new Misreading(slip, shown, taken, number -> Quantity.of(number, taken));
    }
}
