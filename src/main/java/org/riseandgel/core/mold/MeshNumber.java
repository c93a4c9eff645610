package org.riseandgel.core.mold;

import java.math.BigDecimal;
import java.math.MathContext;

/** How a number of a mesh stands in a message: six figures at most, and never in a programmer's spelling. */
final class MeshNumber {
    private static final MathContext FIGURES = new MathContext(6);
    private static final int MOST_PLACES = 9;
    private static final double LARGEST_PLAIN = 1e9;

    private MeshNumber() {}

    static String words(double number) {
        if (Double.isNaN(number)) {
            return "no number";
        }
        if (Double.isInfinite(number)) {
            return "a number without end";
        }
        BigDecimal rounded = new BigDecimal(number).round(FIGURES);
        if (rounded.signum() == 0) {
            return "0";
        }
        BigDecimal bare = rounded.stripTrailingZeros();
        boolean plain = Math.abs(number) < LARGEST_PLAIN && bare.scale() <= MOST_PLACES;
        return plain
                ? bare.toPlainString()
                : bare.round(new MathContext(2)).toString().replace("E+", "e").replace('E', 'e');
    }
}
