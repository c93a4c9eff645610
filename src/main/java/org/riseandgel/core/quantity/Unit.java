package org.riseandgel.core.quantity;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The units the workshop uses: base value = (value − zero point) × factor, all exact.
 *
 * <p>Factors are exact by definition (NIST SP 811, appendix B; 1 in = 25.4 mm, 1 lb = 453.59237 g, 1 US gal = 231 in³).
 * Codes follow UCUM where it has one.
 */
public enum Unit {
    GRAM(QuantityKind.MASS, "g", "g", "1"),
    MILLIGRAM(QuantityKind.MASS, "mg", "mg", "0.001"),
    KILOGRAM(QuantityKind.MASS, "kg", "kg", "1000"),
    OUNCE(QuantityKind.MASS, "oz", "oz", "28.349523125"),
    POUND(QuantityKind.MASS, "lb", "lb", "453.59237"),

    MILLIMETRE(QuantityKind.LENGTH, "mm", "mm", "1"),
    CENTIMETRE(QuantityKind.LENGTH, "cm", "cm", "10"),
    METRE(QuantityKind.LENGTH, "m", "m", "1000"),
    INCH(QuantityKind.LENGTH, "in", "in", "25.4"),
    FOOT(QuantityKind.LENGTH, "ft", "ft", "304.8"),

    SQUARE_MILLIMETRE(QuantityKind.AREA, "mm2", "mm²", "1"),
    SQUARE_CENTIMETRE(QuantityKind.AREA, "cm2", "cm²", "100"),
    SQUARE_METRE(QuantityKind.AREA, "m2", "m²", "1000000"),
    SQUARE_INCH(QuantityKind.AREA, "in2", "in²", "645.16"),

    MILLILITRE(QuantityKind.VOLUME, "mL", "mL", "1"),
    LITRE(QuantityKind.VOLUME, "L", "L", "1000"),
    CUBIC_MILLIMETRE(QuantityKind.VOLUME, "mm3", "mm³", "0.001"),
    CUBIC_METRE(QuantityKind.VOLUME, "m3", "m³", "1000000"),
    CUBIC_INCH(QuantityKind.VOLUME, "in3", "in³", "16.387064"),
    CUBIC_FOOT(QuantityKind.VOLUME, "ft3", "ft³", "28316.846592"),
    US_FLUID_OUNCE(QuantityKind.VOLUME, "US fl oz", "US fl oz", "29.5735295625"),
    US_TABLESPOON(QuantityKind.VOLUME, "US tbsp", "US tbsp", "14.78676478125"),
    US_CUP(QuantityKind.VOLUME, "US cup", "US cup", "236.5882365"),
    US_QUART(QuantityKind.VOLUME, "US qt", "US qt", "946.352946"),
    US_GALLON(QuantityKind.VOLUME, "US gal", "US gal", "3785.411784"),
    IMPERIAL_FLUID_OUNCE(QuantityKind.VOLUME, "imp fl oz", "imp fl oz", "28.4130625"),
    IMPERIAL_GALLON(QuantityKind.VOLUME, "imp gal", "imp gal", "4546.09"),

    GRAM_PER_MILLILITRE(QuantityKind.DENSITY, "g/mL", "g/mL", "1"),
    KILOGRAM_PER_CUBIC_METRE(QuantityKind.DENSITY, "kg/m3", "kg/m³", "0.001"),
    MILLIGRAM_PER_CUBIC_METRE(QuantityKind.DENSITY, "mg/m3", "mg/m³", "0.000000001"),
    GRAM_PER_LITRE(QuantityKind.DENSITY, "g/L", "g/L", "0.001"),
    POUND_PER_CUBIC_FOOT(
            QuantityKind.DENSITY, "lb/ft3", "lb/ft³", Rational.of("453.59237"), Rational.of("28316.846592")),

    DEGREE_CELSIUS(QuantityKind.TEMPERATURE, "Cel", "°C", "1"),
    DEGREE_FAHRENHEIT(QuantityKind.TEMPERATURE, "degF", "°F", Rational.of(5, 9), Rational.of(32), Rational.ONE),
    KELVIN(QuantityKind.TEMPERATURE, "K", "K", Rational.ONE, Rational.of("273.15"), Rational.ONE),

    CELSIUS_STEP(QuantityKind.TEMPERATURE_DIFFERENCE, "Cel difference", "°C", "1"),
    FAHRENHEIT_STEP(QuantityKind.TEMPERATURE_DIFFERENCE, "degF difference", "°F", Rational.of(5, 9), Rational.ONE),

    SECOND(QuantityKind.DURATION, "s", "s", "1"),
    MINUTE(QuantityKind.DURATION, "min", "min", "60"),
    HOUR(QuantityKind.DURATION, "h", "h", "3600"),
    DAY(QuantityKind.DURATION, "day", "days", "86400"),

    /** A plain number: how many times as much. */
    ONE(QuantityKind.RATIO, "1", "", "1"),
    PHP(QuantityKind.PHP, "php", "php", "1"),
    PERCENT(QuantityKind.CONCENTRATION, "%", "%", "1"),

    CUBIC_METRE_PER_HOUR(QuantityKind.FLOW, "m3/h", "m³/h", "1"),
    LITRE_PER_MINUTE(QuantityKind.FLOW, "L/min", "L/min", "0.06"),
    LITRE_PER_SECOND(QuantityKind.FLOW, "L/s", "L/s", "3.6"),
    CUBIC_FOOT_PER_MINUTE(QuantityKind.FLOW, "ft3/min", "ft³/min", "1.69901079552"),

    KILOJOULE(QuantityKind.ENERGY, "kJ", "kJ", "1"),
    WATT_HOUR(QuantityKind.ENERGY, "W.h", "Wh", "3.6"),
    KILOWATT_HOUR(QuantityKind.ENERGY, "kW.h", "kWh", "3600"),

    MILLIMOLE(QuantityKind.SUBSTANCE, "mmol", "mmol", "1"),
    MOLE(QuantityKind.SUBSTANCE, "mol", "mol", "1000"),

    PER_HOUR(QuantityKind.RATE, "/h", "per hour", "1"),
    PER_MINUTE(QuantityKind.RATE, "/min", "per minute", "60"),

    /** Money in the school's own currency, written as a plain number. */
    MONEY(QuantityKind.MONEY, "money", "", "1");

    private static final Map<QuantityKind, Unit> BASES = bases();
    private static final Map<String, Unit> BY_CODE =
            Arrays.stream(values()).collect(Collectors.toMap(Unit::code, Function.identity()));

    private final QuantityKind kind;
    private final String code;
    private final String symbol;
    private final Rational factor;
    private final Rational zeroPoint;
    private final double above;
    private final double below;
    private final double zero;

    Unit(QuantityKind kind, String code, String symbol, String factor) {
        this(kind, code, symbol, Rational.of(factor), Rational.ZERO, Rational.ONE);
    }

    Unit(QuantityKind kind, String code, String symbol, Rational numerator, Rational denominator) {
        this(kind, code, symbol, numerator, Rational.ZERO, denominator);
    }

    Unit(QuantityKind kind, String code, String symbol, Rational numerator, Rational zeroPoint, Rational denominator) {
        this.kind = kind;
        this.code = code;
        this.symbol = symbol;
        this.factor = numerator.dividedBy(denominator);
        this.zeroPoint = zeroPoint;
        above = factor.numerator().doubleValue();
        below = factor.denominator().doubleValue();
        zero = zeroPoint.toDouble();
    }

    /** What the unit measures. */
    public QuantityKind kind() {
        return kind;
    }

    /** The code under which the unit is stored and named in files, UCUM's where it has one. */
    public String code() {
        return code;
    }

    /** How the unit is written for people; empty for a plain number. */
    public String symbol() {
        return symbol;
    }

    /** Base units per unit, exact. */
    public Rational factor() {
        return factor;
    }

    /** The value in base units: (value − zero point) × factor. */
    public Rational toBase(Rational value) {
        return value.minus(zeroPoint).times(factor);
    }

    /** The value in this unit: base ÷ factor + zero point. */
    public Rational fromBase(Rational base) {
        return base.dividedBy(factor).plus(zeroPoint);
    }

    /**
     * As {@link #toBase(Rational)}, in double precision. Both parts of the factor are exact in a double, so that 3 in is
     * 76.2 mm to the last bit.
     */
    public double toBase(double value) {
        return (value - zero) * above / below;
    }

    /** As {@link #fromBase(Rational)}, in double precision. */
    public double fromBase(double base) {
        return base * below / above + zero;
    }

    /**
     * This unit as it must be understood where a quantity of the given kind is asked for: degrees become steps of
     * degrees when a difference is asked, a bare number is money when money is asked, and all else stays what it is.
     */
    public Unit whenAskedFor(QuantityKind asked) {
        if (asked == QuantityKind.MONEY && this == ONE) {
            return MONEY;
        }
        if (asked != QuantityKind.TEMPERATURE_DIFFERENCE) {
            return this;
        }
        return switch (this) {
            case DEGREE_CELSIUS, KELVIN -> CELSIUS_STEP;
            case DEGREE_FAHRENHEIT -> FAHRENHEIT_STEP;
            default -> this;
        };
    }

    /** The unit with this code. */
    public static Optional<Unit> byCode(String code) {
        return Optional.ofNullable(BY_CODE.get(code));
    }

    static Unit baseOf(QuantityKind kind) {
        return BASES.get(kind);
    }

    private static Map<QuantityKind, Unit> bases() {
        Map<QuantityKind, Unit> bases = new EnumMap<>(QuantityKind.class);
        for (Unit unit : values()) {
            if (unit.factor.equals(Rational.ONE) && unit.zeroPoint.signum() == 0) {
                bases.putIfAbsent(unit.kind, unit);
            }
        }
        return bases;
    }
}
