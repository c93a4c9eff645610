package org.riseandgel.exercise;

import java.util.List;
import org.riseandgel.core.quantity.QuantityKind;
import org.riseandgel.core.quantity.Unit;

/**
 * The units that people at a bench mix up with each other, by kind. Left out are units that nobody would have meant, such
 * as milligrams for a batch: there a moved decimal mark is the likelier story.
 */
final class KindredUnits {
    private KindredUnits() {}

    static List<Unit> of(QuantityKind kind) {
        return switch (kind) {
            case MASS -> List.of(Unit.GRAM, Unit.KILOGRAM, Unit.OUNCE, Unit.POUND);
            case LENGTH -> List.of(Unit.MILLIMETRE, Unit.CENTIMETRE, Unit.INCH, Unit.METRE, Unit.FOOT);
            case AREA -> List.of(Unit.SQUARE_MILLIMETRE, Unit.SQUARE_CENTIMETRE, Unit.SQUARE_INCH);
            case VOLUME -> List.of(Unit.MILLILITRE, Unit.LITRE, Unit.US_FLUID_OUNCE, Unit.US_CUP, Unit.CUBIC_INCH);
            case DENSITY -> List.of(Unit.GRAM_PER_MILLILITRE, Unit.KILOGRAM_PER_CUBIC_METRE, Unit.POUND_PER_CUBIC_FOOT);
            case TEMPERATURE -> List.of(Unit.DEGREE_CELSIUS, Unit.DEGREE_FAHRENHEIT);
            case TEMPERATURE_DIFFERENCE -> List.of(Unit.CELSIUS_STEP, Unit.FAHRENHEIT_STEP);
            case DURATION -> List.of(Unit.MINUTE, Unit.HOUR, Unit.SECOND);
            case FLOW -> List.of(Unit.CUBIC_METRE_PER_HOUR, Unit.LITRE_PER_MINUTE, Unit.CUBIC_FOOT_PER_MINUTE);
            case ENERGY -> List.of(Unit.KILOJOULE, Unit.WATT_HOUR);
            case RATIO, PHP, CONCENTRATION, SUBSTANCE, RATE, MONEY -> List.of();
        };
    }
}
