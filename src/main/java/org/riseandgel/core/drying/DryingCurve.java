package org.riseandgel.core.drying;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.statistics.Estimate;
import org.riseandgel.core.statistics.FittedApproach;
import org.riseandgel.core.statistics.Student;

/** A fitted drying curve, m(t) = m∞ + (m₀ − m∞)·e^(−k·t); see {@link WeighBack}. */
public final class DryingCurve implements DryingOutcome {
    private final FittedApproach mass;
    private final double first;

    DryingCurve(FittedApproach mass, double first) {
        this.mass = mass;
        this.first = first;
    }

    /** m∞, the mass when dry, in g. */
    public Estimate dryGrams(double probability) {
        return Estimate.of(mass.level(), mass.levelError(), mass.degreesOfFreedom(), probability);
    }

    /** k, in one per hour. */
    public Estimate ratePerHour(double probability) {
        return Estimate.of(mass.rate(), mass.rateError(), mass.degreesOfFreedom(), probability);
    }

    /** The mass of the curve at a time from the first weighing on. */
    public Mass massAt(TimeSpan time) {
        return Mass.ofGrams(mass.at(sinceFirst(time)));
    }

    /** The water still to go at a time from the first weighing on: (m₀ − m∞)·e^(−k·t). */
    public Mass waterAt(TimeSpan time) {
        return Mass.ofGrams(-mass.amplitude() * StrictMath.exp(-mass.rate() * sinceFirst(time)));
    }

    /** The share of the water of the first weighing that is still to go at a time: e^(−k·t). */
    public double shareLeftAt(TimeSpan time) {
        return StrictMath.exp(-mass.rate() * sinceFirst(time));
    }

    /**
     * When only a share f of the water of the first weighing will be left: t = ln(1/f) ÷ k. Since k is positive, the
     * interval is taken on ln t, whose standard error is that of k over k (delta method; Student's t).
     *
     * @param shareLeft f, more than 0 and at most 1; 0.02 for 98 % dry
     * @throws OutOfRangeException outside these
     */
    public DryingForecast timeTo(double shareLeft, double probability) {
        Checks.inRange("share of water left", Checks.positive("share of water left", shareLeft), 0, 1);
        double hours = -StrictMath.log(shareLeft) / mass.rate();
        double reach =
                StrictMath.exp(Student.factor(probability, mass.degreesOfFreedom()) * mass.rateError() / mass.rate());
        return new DryingForecast(
                TimeSpan.ofHours(first + hours / reach),
                TimeSpan.ofHours(first + hours),
                TimeSpan.ofHours(first + hours * reach),
                probability);
    }

    private double sinceFirst(TimeSpan time) {
        return Checks.inRange("time in hours", time.inHours(), first, Checks.LARGEST) - first;
    }
}
