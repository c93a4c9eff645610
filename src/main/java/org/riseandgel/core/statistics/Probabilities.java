package org.riseandgel.core.statistics;

import org.riseandgel.core.quantity.OutOfRangeException;

/** Probabilities of intervals. */
final class Probabilities {
    private Probabilities() {}

    /** The probability, if it lies strictly between 0 and 1. */
    static double inside(double probability) {
        if (probability > 0 && probability < 1) {
            return probability;
        }
        throw OutOfRangeException.because(
                "probability", "probability is %s, must be more than 0 and less than 1".formatted(probability));
    }
}
