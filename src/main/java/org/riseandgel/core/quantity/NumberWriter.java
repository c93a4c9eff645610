package org.riseandgel.core.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Writes numbers for people, so that {@link NumberReader} with the same mark reads back the number written.
 *
 * <p>Ties are rounded away from zero, on the decimal that is shown and not on its binary neighbour: 1.005 with two places
 * is 1.01. The minus is U+2212. From 10 000 on the digits before the mark stand in threes, parted by a narrow no-break
 * space; a no-break space parts number and unit.
 */
public final class NumberWriter {
    private static final char MINUS = '\u2212';
    private static final char GROUP_SPACE = '\u202F';
    private static final char UNIT_SPACE = '\u00A0';
    private static final int UNGROUPED = 4;
    private static final BigDecimal SMALLEST_PLAIN = new BigDecimal("1e-6");
    private static final BigDecimal LARGEST_PLAIN = new BigDecimal("1e12");
    private static final String RAISED_DIGITS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    private final DecimalMark mark;

    private NumberWriter(DecimalMark mark) {
        this.mark = mark;
    }

    /** A writer for a school that writes the given decimal mark. */
    public static NumberWriter of(DecimalMark mark) {
        return new NumberWriter(mark);
    }

    /** The value with exactly so many decimal places, 0 to 17. */
    public String plain(Rational value, int places) {
        Checks.inRange("decimal places", places, 0, 17);
        return grouped(value.toDecimal(places));
    }

    /** The value with exactly so many decimal places, 0 to 17; NaN and infinities are refused. */
    public String plain(double value, int places) {
        Checks.inRange("decimal places", places, 0, 17);
        return grouped(Rounding.shortest(value).setScale(places, RoundingMode.HALF_UP));
    }

    /** The value to the nearest step of an instrument, with the places the step has: 12.34 at 0.05 is 12.35. */
    public String toReadability(double value, double readability) {
        Checks.positive("readability", readability);
        BigDecimal step = Rounding.shortest(readability);
        Rational rounded = Rounding.toReadability(Rational.of(Rounding.shortest(value)), Rational.of(step));
        return grouped(rounded.toDecimal(Math.max(0, step.stripTrailingZeros().scale())));
    }

    /**
     * The value with 1 to 17 significant figures, zeros at the end kept. Written out from 0.000 001 to 10¹² in magnitude,
     * as 1.23 × 10⁻⁷ beyond.
     */
    public String figures(double value, int significant) {
        Checks.inRange("significant figures", significant, 1, 17);
        BigDecimal rounded = Rounding.shortest(value).round(new MathContext(significant, RoundingMode.HALF_UP));
        if (rounded.signum() == 0) {
            return grouped(BigDecimal.ZERO.setScale(significant - 1));
        }
        int magnitude = rounded.precision() - rounded.scale() - 1;
        BigDecimal size = rounded.abs();
        if (size.compareTo(SMALLEST_PLAIN) < 0 || size.compareTo(LARGEST_PLAIN) > 0) {
            return power(rounded, significant);
        }
        return grouped(rounded.setScale(Math.max(0, significant - 1 - magnitude), RoundingMode.UNNECESSARY));
    }

    /** The quantity in a unit of its kind, to the nearest step of an instrument in that unit: "12.5 g". */
    public String with(Quantity quantity, Unit unit, double readability) {
        String number = toReadability(quantity.in(unit), readability);
        return unit.symbol().isEmpty() ? number : number + UNIT_SPACE + unit.symbol();
    }

    /** The value without any rounding: as a decimal if one holds it, else as a mixed number; digits ungrouped. */
    String exact(Rational value) {
        if (!Rounding.terminates(value)) {
            return mixed(value);
        }
        BigDecimal decimal = Rounding.exactDecimal(value);
        return canBeReadInFull(decimal) ? ungrouped(decimal) : power(decimal, decimal.precision());
    }

    /** The value as whole number and fraction: "1 1/2". */
    String mixed(Rational value) {
        var parts = value.abs().numerator().divideAndRemainder(value.denominator());
        String fraction = parts[1].signum() == 0 ? "" : parts[1] + "/" + value.denominator();
        String whole = parts[0].signum() == 0 && !fraction.isEmpty() ? "" : parts[0].toString();
        String between = whole.isEmpty() || fraction.isEmpty() ? "" : " ";
        return (value.signum() < 0 ? String.valueOf(MINUS) : "") + whole + between + fraction;
    }

    /** A decimal in full, or with a power of ten if it has too many digits to be read back in full. */
    String decimal(BigDecimal value) {
        return canBeReadInFull(value) ? grouped(value) : power(value, value.precision());
    }

    private static boolean canBeReadInFull(BigDecimal value) {
        return Math.max(value.precision(), value.scale() + 1) <= Shape.MOST_DIGITS;
    }

    private String grouped(BigDecimal value) {
        String digits = ungrouped(value);
        int end = digits.indexOf(mark.mark()) < 0 ? digits.length() : digits.indexOf(mark.mark());
        int start = value.signum() < 0 ? 1 : 0;
        StringBuilder text = new StringBuilder(digits);
        for (int at = end - 3; end - start > UNGROUPED && at > start; at -= 3) {
            text.insert(at, GROUP_SPACE);
        }
        return text.toString();
    }

    private String ungrouped(BigDecimal value) {
        String size = mark.in(value.abs().toPlainString());
        return value.signum() < 0 ? MINUS + size : size;
    }

    private String power(BigDecimal value, int significant) {
        int magnitude = value.precision() - value.scale() - 1;
        BigDecimal mantissa = value.movePointLeft(magnitude).setScale(significant - 1, RoundingMode.UNNECESSARY);
        return ungrouped(mantissa) + UNIT_SPACE + "×" + UNIT_SPACE + "10" + raised(magnitude);
    }

    private static String raised(int exponent) {
        StringBuilder raised = new StringBuilder(exponent < 0 ? "⁻" : "");
        for (char digit : String.valueOf(Math.abs(exponent)).toCharArray()) {
            raised.append(RAISED_DIGITS.charAt(digit - '0'));
        }
        return raised.toString();
    }
}
