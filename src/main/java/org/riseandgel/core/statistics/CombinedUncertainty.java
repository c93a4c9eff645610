package org.riseandgel.core.statistics;

import java.util.List;
import org.riseandgel.core.quantity.Checks;

/**
 * The standard uncertainty of a result from those of what it was computed from, the parts being independent. Source: JCGM
 * 100:2008, 5.1.2 and 5.1.6.
 */
public final class CombinedUncertainty {
    private CombinedUncertainty() {}

    /** A measured part: its value of more than zero and its standard uncertainty of zero or more, in one unit. */
    public record Part(double value, double uncertainty) {
        public Part {
            Checks.positive("value", value);
            Checks.notNegative("standard uncertainty", uncertainty);
        }

        /** Uncertainty ÷ value. */
        public double relative() {
            return uncertainty / value;
        }
    }

    /** For a sum or difference: u = √Σuᵢ². */
    public static double ofSum(List<Part> parts) {
        return rootOfSquares(parts.stream().mapToDouble(Part::uncertainty).toArray());
    }

    /** For a product or quotient, each part to the power 1 or −1: u ÷ |y| = √Σ(uᵢ ÷ xᵢ)². */
    public static double relativeOfProduct(List<Part> parts) {
        return rootOfSquares(parts.stream().mapToDouble(Part::relative).toArray());
    }

    private static double rootOfSquares(double[] values) {
        CompensatedSum sum = new CompensatedSum();
        for (double value : values) {
            sum.add(value * value);
        }
        return StrictMath.sqrt(sum.total());
    }
}
