package org.riseandgel.core.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.EnumSet;
import java.util.Set;

/** Tells a person what was read: in plain notation, with the metric equivalent of other units and of fractions. */
final class Echo {
    private static final MathContext SIX_FIGURES = new MathContext(6, RoundingMode.HALF_UP);
    private static final Set<Unit> NOT_METRIC = EnumSet.of(
            Unit.OUNCE,
            Unit.POUND,
            Unit.INCH,
            Unit.FOOT,
            Unit.SQUARE_INCH,
            Unit.CUBIC_INCH,
            Unit.CUBIC_FOOT,
            Unit.US_FLUID_OUNCE,
            Unit.US_TABLESPOON,
            Unit.US_CUP,
            Unit.US_QUART,
            Unit.US_GALLON,
            Unit.IMPERIAL_FLUID_OUNCE,
            Unit.IMPERIAL_GALLON,
            Unit.POUND_PER_CUBIC_FOOT,
            Unit.DEGREE_FAHRENHEIT,
            Unit.FAHRENHEIT_STEP,
            Unit.CUBIC_FOOT_PER_MINUTE);

    private final NumberWriter writer;

    Echo(DecimalMark mark) {
        writer = NumberWriter.of(mark);
    }

    String of(Reading reading) {
        Unit unit = reading.typedUnit().orElse(Unit.ONE);
        boolean fraction = reading.figures().exact() || !Rounding.terminates(reading.value());
        String read = fraction ? writer.mixed(reading.value()) : decimal(reading.value());
        if (NOT_METRIC.contains(unit)) {
            Unit metric = metric(unit);
            return with(unit, read) + " (" + rounded(metric.fromBase(unit.toBase(reading.value())), metric) + ")";
        }
        boolean whole = reading.value().denominator().bitLength() == 1;
        return with(unit, read) + (fraction && !whole ? " (" + rounded(reading.value(), unit) + ")" : "");
    }

    private static Unit metric(Unit unit) {
        return unit == Unit.POUND_PER_CUBIC_FOOT
                ? Unit.KILOGRAM_PER_CUBIC_METRE
                : unit.kind().baseUnit();
    }

    private String decimal(Rational value) {
        return writer.decimal(Rounding.exactDecimal(value));
    }

    private String rounded(Rational value, Unit unit) {
        BigDecimal six = new BigDecimal(value.numerator()).divide(new BigDecimal(value.denominator()), SIX_FIGURES);
        Rational shown = Rational.of(six);
        return (shown.equals(value) ? "" : "about ") + with(unit, decimal(shown));
    }

    private static String with(Unit unit, String number) {
        return unit.symbol().isEmpty() ? number : number + "\u00A0" + unit.symbol();
    }
}
