package org.riseandgel.grading;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Rational;

/**
 * Points of a try: the sum over its items of weight · (sum of credit % over parts) ÷ (100 · number of parts), exact.
 *
 * @param outOf the sum of the weights
 */
record Score(Rational points, int outOf) implements Comparable<Score> {
    private static final int PLACES = 2;

    /** The points of one item. */
    static Rational of(Work.Item item, int parts) {
        long credit = IntStream.range(0, parts).mapToLong(item::credit).sum();
        return Rational.of(item.weight() * credit, (long) MarkChange.ALL * parts);
    }

    /** The points of items whose numbers of parts are told by the function. */
    static Score of(List<Work.Item> items, ToIntFunction<Work.Item> parts) {
        return new Score(
                items.stream().map(item -> of(item, parts.applyAsInt(item))).reduce(Rational.ZERO, Rational::plus),
                items.stream().mapToInt(Work.Item::weight).sum());
    }

    /** The share in percent, with one place, half up. */
    BigDecimal percent() {
        return points.times(Rational.of(100))
                .dividedBy(Rational.of(outOf))
                .toDecimal(9)
                .setScale(1, RoundingMode.HALF_UP);
    }

    /** The points as people write them. */
    static BigDecimal written(Rational points) {
        BigDecimal rounded =
                points.toDecimal(9).setScale(PLACES, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    static String text(BigDecimal number, DecimalMark mark) {
        return mark == DecimalMark.COMMA ? number.toPlainString().replace('.', ',') : number.toPlainString();
    }

    /** "7.5 of 10 points". */
    String words(DecimalMark mark) {
        return text(written(points), mark) + " of " + outOf + (outOf == 1 ? " point" : " points");
    }

    @Override
    public int compareTo(Score other) {
        return points.compareTo(other.points);
    }
}
