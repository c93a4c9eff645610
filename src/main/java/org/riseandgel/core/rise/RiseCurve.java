package org.riseandgel.core.rise;

import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.statistics.Estimate;
import org.riseandgel.core.statistics.FittedApproach;
import org.riseandgel.core.statistics.Interval;

/** A fitted rise, R(t) = 1 + (Rmax − 1)·(1 − e^(−k·t)); see {@link RiseFit}. */
public final class RiseCurve implements RiseOutcome {
    private final FittedApproach gain;

    RiseCurve(FittedApproach gain) {
        this.gain = gain;
    }

    /** Rmax, the ratio the curve tends to and never passes. */
    public Estimate highest(double probability) {
        return Estimate.of(1 + gain.level(), gain.levelError(), gain.degreesOfFreedom(), probability);
    }

    /** k, in one per minute. */
    public Estimate ratePerMinute(double probability) {
        return Estimate.of(gain.rate(), gain.rateError(), gain.degreesOfFreedom(), probability);
    }

    /** The ratio of the curve after whipping for a time. */
    public Ratio ratioAt(TimeSpan whipped) {
        return Ratio.of(1 + gain.at(whipped.inMinutes()));
    }

    /** Where the stick will be read after whipping for a time: the curve's error and the scatter of one reading. */
    public Estimate readingAt(TimeSpan whipped, double probability) {
        Estimate plain = gain.readingAt(whipped.inMinutes(), probability);
        Interval interval = plain.interval();
        return new Estimate(
                1 + plain.value(),
                plain.standardError(),
                new Interval(1 + interval.low(), 1 + interval.high(), probability));
    }

    /**
     * When a ratio will be read: t = −ln(1 − (R − 1) ÷ (Rmax − 1)) ÷ k, and around it all times at which the wanted ratio
     * lies within the interval of a reading (delta method for the curve, plus the residual; Student's t).
     *
     * @param wanted more than 1
     * @param probability more than 0 and less than 1
     * @return when, or that the ratio is at or beyond Rmax
     * @throws OutOfRangeException outside these
     */
    public RiseForecast timeTo(Ratio wanted, double probability) {
        double rise = wanted.asNumber() - 1;
        if (!(rise > 0)) {
            throw OutOfRangeException.because(
                    "wanted ratio", "wanted ratio is %s, must be more than 1".formatted(wanted.asNumber()));
        }
        return rise < gain.level()
                ? new TimeBand(gain, rise, probability).forecast()
                : new RiseForecast.BeyondHighest(wanted, highest(probability));
    }
}
