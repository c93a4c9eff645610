package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.*;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.riseandgel.core.quantity.Unit;

/** The units in which a sheet shows what comes out. A unit without a counterpart stays as it is. */
public enum UnitSystem {
    METRIC("metric", "Metric units"),
    US("us", "US units");

    private static final int[] STEPS = {5, 2, 1};

    private final String id;
    private final String label;

    UnitSystem(String id, String label) {
        this.id = id;
        this.label = label;
    }

    /** The name in addresses. */
    public String id() {
        return id;
    }

    /** What a page calls it. */
    public String label() {
        return label;
    }

    /** The system of that name; metric when none or none known is asked for. */
    public static UnitSystem of(String id) {
        return US.id.equals(id) ? US : METRIC;
    }

    /** The one that a sheet shown in this offers instead. */
    public UnitSystem other() {
        return this == US ? METRIC : US;
    }

    /** The unit of this system that stands for a unit of the other. */
    public Unit counterpart(Unit unit) {
        return this == US ? us(unit) : metric(unit);
    }

    /**
     * The readability that shows all an instrument shows, and little more: the largest step of 1, 2 or 5 times a power
     * of ten that is no coarser than the readability converted. 0 stays 0.
     */
    public double readability(Unit unit, double readability) {
        Unit shown = counterpart(unit);
        return shown == unit || readability == 0
                ? readability
                : roundStep(
                        readability * unit.factor().dividedBy(shown.factor()).toDouble());
    }

    private static double roundStep(double step) {
        BigDecimal exact = new BigDecimal(step).round(new MathContext(12, RoundingMode.HALF_UP));
        BigDecimal power = BigDecimal.ONE.scaleByPowerOfTen(exact.precision() - exact.scale() - 1);
        for (int times : STEPS) {
            BigDecimal candidate = power.multiply(BigDecimal.valueOf(times));
            if (candidate.compareTo(exact) <= 0) {
                return candidate.doubleValue();
            }
        }
        throw new IllegalStateException("no round step below " + step);
    }

    private static Unit us(Unit unit) {
        return switch (unit) {
            case GRAM -> OUNCE;
            case KILOGRAM -> POUND;
            case MILLIMETRE, CENTIMETRE -> INCH;
            case METRE -> FOOT;
            case SQUARE_MILLIMETRE, SQUARE_CENTIMETRE, SQUARE_METRE -> SQUARE_INCH;
            case MILLILITRE -> US_FLUID_OUNCE;
            case LITRE -> US_QUART;
            case CUBIC_MILLIMETRE -> CUBIC_INCH;
            case CUBIC_METRE -> CUBIC_FOOT;
            case GRAM_PER_MILLILITRE, GRAM_PER_LITRE, KILOGRAM_PER_CUBIC_METRE -> POUND_PER_CUBIC_FOOT;
            case CUBIC_METRE_PER_HOUR, LITRE_PER_MINUTE, LITRE_PER_SECOND -> CUBIC_FOOT_PER_MINUTE;
            case DEGREE_CELSIUS, KELVIN -> DEGREE_FAHRENHEIT;
            case CELSIUS_STEP -> FAHRENHEIT_STEP;
            default -> unit;
        };
    }

    private static Unit metric(Unit unit) {
        return switch (unit) {
            case OUNCE -> GRAM;
            case POUND -> KILOGRAM;
            case INCH -> CENTIMETRE;
            case FOOT -> METRE;
            case SQUARE_INCH -> SQUARE_CENTIMETRE;
            case US_FLUID_OUNCE, US_TABLESPOON, US_CUP, IMPERIAL_FLUID_OUNCE, CUBIC_INCH -> MILLILITRE;
            case US_QUART, US_GALLON, IMPERIAL_GALLON -> LITRE;
            case CUBIC_FOOT -> CUBIC_METRE;
            case POUND_PER_CUBIC_FOOT -> GRAM_PER_MILLILITRE;
            case CUBIC_FOOT_PER_MINUTE -> CUBIC_METRE_PER_HOUR;
            case DEGREE_FAHRENHEIT -> DEGREE_CELSIUS;
            case FAHRENHEIT_STEP -> CELSIUS_STEP;
            default -> unit;
        };
    }
}
