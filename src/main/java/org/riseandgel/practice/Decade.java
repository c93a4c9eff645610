package org.riseandgel.practice;

import java.util.List;
import java.util.stream.IntStream;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberWriter;
import org.riseandgel.core.quantity.QuantityKind;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;

/**
 * The values from 10ᵉ to 10ᵉ⁺¹ of a unit, both ends included: what somebody chooses who estimates before reckoning.
 *
 * @param exponent e
 */
record Decade(int exponent) {
    private static final int SHOWN = 5;
    private static final int FARTHEST = 9;

    /** Whether the value lies in it. */
    boolean contains(Rational value) {
        return power(exponent).compareTo(value) <= 0 && value.compareTo(power(exponent + 1)) <= 0;
    }

    /** "10 to 100 g". */
    String words(Unit unit, DecimalMark mark) {
        String range = number(exponent, mark) + " to " + number(exponent + 1, mark);
        return unit.symbol().isEmpty() ? range : range + "\u00a0" + unit.symbol();
    }

    /** Whether an estimate in decades says anything about such a value: it must be above zero, and no temperature. */
    static boolean suits(Rational value, Unit unit) {
        return value.signum() > 0
                && unit.kind() != QuantityKind.TEMPERATURE
                && unit.kind() != QuantityKind.TEMPERATURE_DIFFERENCE
                && Math.abs(of(value).exponent) < FARTHEST;
    }

    /** The lower of the decades that contain a value above zero. */
    static Decade of(Rational value) {
        int exponent = 0;
        while (power(exponent).compareTo(value) > 0) {
            exponent--;
        }
        while (power(exponent + 1).compareTo(value) < 0) {
            exponent++;
        }
        return new Decade(exponent);
    }

    /**
     * Five decades in a row that hold the value. Where it stands among them comes from the seed alone, so the choice gives
     * nothing away.
     */
    static List<Decade> choices(Rational value, long seed) {
        int place = (int) Long.remainderUnsigned(seed * 0x9E37_79B9_7F4A_7C15L >>> 17, SHOWN);
        int first = of(value).exponent - place;
        return IntStream.range(first, first + SHOWN).mapToObj(Decade::new).toList();
    }

    private static Rational power(int exponent) {
        Rational ten = Rational.of(10);
        Rational power = Rational.ONE;
        for (int i = 0; i < Math.abs(exponent); i++) {
            power = power.times(ten);
        }
        return exponent < 0 ? Rational.ONE.dividedBy(power) : power;
    }

    private static String number(int exponent, DecimalMark mark) {
        return NumberWriter.of(mark).plain(power(exponent), Math.max(0, -exponent));
    }
}
