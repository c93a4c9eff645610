package org.riseandgel.exercise;

import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberWriter;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;

/**
 * How close an answer must come: |x − t| ≤ max(abs, percent ÷ 100 · |t|, readability ÷ 2), edges included, in exact
 * arithmetic.
 *
 * <p>Half a step of the instrument is always allowed, because nobody can read it better and either way of rounding a tie
 * is then inside.
 *
 * @param abs in the unit of the part; zero when only a percentage is given
 * @param percent of the right value; zero when only a fixed tolerance is given
 * @param readability of the instrument, in the unit of the part
 * @param because why so close and no closer, in words
 */
public record Tolerance(Rational abs, Rational percent, Rational readability, String because) {
    private static final Rational HALF = Rational.of(1, 2);
    private static final Rational HUNDREDTH = Rational.of(1, 100);
    private static final int MOST_PLACES = 6;

    /** Half the width of the band around a right value, both in the unit of the part. */
    public Rational halfWidth(Rational right) {
        return larger(floor(), right.abs().times(percent).times(HUNDREDTH));
    }

    /** What is said beside the question, which must not give the right value away: "within 2 %". */
    public String words(Unit unit, DecimalMark mark) {
        String fixed = written(floor(), unit, mark);
        if (percent.signum() == 0) {
            return "within " + fixed;
        }
        return "within %s, or %s if that is more".formatted(written(percent, Unit.PERCENT, mark), fixed);
    }

    /** What is said once the answer is in: "within 2 %, that is 0.4 g". */
    public String wordsFor(Rational right, Unit unit, DecimalMark mark) {
        Rational half = halfWidth(right);
        if (half.equals(floor())) {
            return "within " + written(half, unit, mark);
        }
        return "within %s, that is %s".formatted(written(percent, Unit.PERCENT, mark), written(half, unit, mark));
    }

    /** The part of the tolerance that does not depend on the right value. */
    public Rational floor() {
        return larger(abs, readability.times(HALF));
    }

    private static Rational larger(Rational one, Rational other) {
        return one.compareTo(other) >= 0 ? one : other;
    }

    /** To three figures at most, which says all that anybody wants to know of a tolerance. */
    private static String written(Rational value, Unit unit, DecimalMark mark) {
        int places = 0;
        while (places < MOST_PLACES && !enough(value, places)) {
            places++;
        }
        String number = NumberWriter.of(mark).plain(value, places);
        return unit.symbol().isEmpty() ? number : number + "\u00a0" + unit.symbol();
    }

    private static boolean enough(Rational value, int places) {
        Rational rounded = Rational.of(value.toDecimal(places));
        Rational gap = rounded.minus(value).abs();
        return gap.times(Rational.of(200)).compareTo(value.abs()) <= 0 && rounded.signum() != 0;
    }
}
