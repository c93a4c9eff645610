package org.riseandgel.core.rise;

import java.util.Optional;
import java.util.function.DoublePredicate;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.statistics.FittedApproach;
import org.riseandgel.core.statistics.Student;

/** The times at which a level lies within the interval of a reading: where the upper and the lower bound cross it. */
final class TimeBand {
    /** After 25 time constants the curve is level to the last digits. */
    private static final double LEVEL_AFTER = 25;

    private static final int STEPS = 1000;
    private static final int HALVINGS = 60;

    private final FittedApproach gain;
    private final double wanted;
    private final double probability;
    private final double factor;

    TimeBand(FittedApproach gain, double wanted, double probability) {
        this.gain = gain;
        this.wanted = wanted;
        this.probability = probability;
        factor = Student.factor(probability, gain.degreesOfFreedom());
    }

    RiseForecast.Reached forecast() {
        double middle = gain.placeOf(wanted);
        double end = Math.max(2 * middle, LEVEL_AFTER / gain.rate());
        double earliest = firstFrom(0, middle, x -> gain.at(x) + factor * gain.readingError(x) >= wanted)
                .orElse(middle);
        Optional<TimeSpan> latest = firstFrom(middle, end, x -> gain.at(x) - factor * gain.readingError(x) >= wanted)
                .map(TimeSpan::ofMinutes);
        return new RiseForecast.Reached(TimeSpan.ofMinutes(earliest), TimeSpan.ofMinutes(middle), latest, probability);
    }

    private static Optional<Double> firstFrom(double start, double end, DoublePredicate reached) {
        double before = start;
        for (int i = 0; i <= STEPS; i++) {
            double here = start + (end - start) * i / STEPS;
            if (reached.test(here)) {
                return Optional.of(between(before, here, reached));
            }
            before = here;
        }
        return Optional.empty();
    }

    private static double between(double before, double after, DoublePredicate reached) {
        double low = before;
        double high = after;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = low + (high - low) / 2;
            if (reached.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }
}
