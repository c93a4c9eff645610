package org.riseandgel.core.gel;

import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.statistics.StudentForecast;

/**
 * The scatter that a belief implies: the scale of Student's t about ln t₀ that puts the wanted share of gels between low
 * and high.
 *
 * <p>Between 10 and 15 minutes the middle that fits a symmetric spread would be √150 = 12.247 minutes, with a normal
 * deviation of ln(15/10) ÷ (2·1.645) = 0.1233. About 12.5 minutes the two tails differ, 10 being farther off than 15, so
 * the scale is solved for by halving: the share between the two is what is kept, not equal tails.
 */
final class PriorScatter {
    private static final double SMALLEST = 1e-4;
    private static final double LARGEST = 10;
    private static final int HALVINGS = 100;

    private final GelPrior prior;

    PriorScatter(GelPrior prior) {
        this.prior = prior;
    }

    /** The scale of ln t for one gel at the reference. */
    double ofOneGel() {
        double low = SMALLEST;
        double high = LARGEST;
        if (share(low) < prior.share()) {
            throw OutOfRangeException.because(
                    "middle gel time",
                    "middle gel time is %s s, must lie between %s and %s s"
                            .formatted(
                                    prior.middle().inSeconds(),
                                    prior.low().inSeconds(),
                                    prior.high().inSeconds()));
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = low + (high - low) / 2;
            if (share(middle) > prior.share()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low + (high - low) / 2;
    }

    private double share(double scale) {
        StudentForecast gel = new StudentForecast(log(prior.middle().inMinutes()), scale, prior.scatterRecords());
        return gel.below(log(prior.high().inMinutes()))
                - gel.below(log(prior.low().inMinutes()));
    }

    private static double log(double value) {
        return StrictMath.log(value);
    }
}
