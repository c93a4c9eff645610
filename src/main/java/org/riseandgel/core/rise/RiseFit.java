package org.riseandgel.core.rise;

import java.util.List;
import java.util.Optional;
import org.riseandgel.core.statistics.ApproachFit;
import org.riseandgel.core.statistics.ExponentialApproach;
import org.riseandgel.core.statistics.FittedApproach;
import org.riseandgel.core.statistics.Point;
import org.riseandgel.core.statistics.ReadingNoise;

/**
 * Fits R(t) = 1 + (Rmax − 1)·(1 − e^(−k·t)) to readings of a rise by least squares.
 *
 * <p>R is the expansion ratio (no unit), t the whipping time in minutes, Rmax > 1 the ratio it tends to, k > 0 in one per
 * minute. At t = 0 the ratio is 1 by definition, so a reading at the start tells nothing and is left out. The form is the
 * simplest that rises from 1 and levels off: common practice in fitting, no source for this foam.
 */
public final class RiseFit {
    /** Readings scatter by a tenth, a guess worth two readings. Common practice, no source. */
    public static final ReadingNoise USUAL_NOISE = new ReadingNoise(0.1, 2);

    /** How surely the readings must rule out a straight line and a step. */
    private static final double SURE = 0.9;

    private static final int FEWEST = 3;

    private RiseFit() {}

    /** The curve through readings in any order, with the usual scatter of a reading; see {@link #USUAL_NOISE}. */
    public static RiseOutcome of(List<RiseReading> readings) {
        return of(readings, USUAL_NOISE);
    }

    /** The curve through readings in any order, with what is known beforehand of the scatter of a reading. */
    public static RiseOutcome of(List<RiseReading> readings, ReadingNoise noise) {
        List<Point> points = readings.stream()
                .filter(reading -> reading.whipped().inSeconds() > 0)
                .map(reading ->
                        new Point(reading.whipped().inMinutes(), reading.ratio().asNumber() - 1))
                .toList();
        if (points.stream().mapToDouble(Point::x).distinct().count() < FEWEST) {
            return new RiseOutcome.CannotTell(
                    RiseOutcome.Reason.TOO_FEW, "Take readings at three or more different times after the start.");
        }
        return outcome(ExponentialApproach.throughOrigin(noise).fit(points));
    }

    private static RiseOutcome outcome(ApproachFit fit) {
        if (fit instanceof FittedApproach curve) {
            return outcome(curve);
        }
        return cannotTell(((ApproachFit.CannotTell) fit).doubt());
    }

    private static RiseOutcome outcome(FittedApproach curve) {
        if (curve.amplitude() <= 0) {
            return notRising();
        }
        Optional<ApproachFit.CannotTell> doubt = curve.doubt(SURE);
        return doubt.isPresent() ? cannotTell(doubt.get().doubt()) : new RiseCurve(curve);
    }

    private static RiseOutcome cannotTell(ApproachFit.Doubt doubt) {
        return switch (doubt) {
            case TOO_FEW -> new RiseOutcome.CannotTell(RiseOutcome.Reason.TOO_FEW, doubt.words());
            case NO_CHANGE -> notRising();
            case STRAIGHT -> new RiseOutcome.CannotTell(RiseOutcome.Reason.NOT_LEVELLING, doubt.words());
            case LEVEL -> new RiseOutcome.CannotTell(RiseOutcome.Reason.LEVEL_FROM_THE_START, doubt.words());
        };
    }

    private static RiseOutcome notRising() {
        return new RiseOutcome.CannotTell(
                RiseOutcome.Reason.NOT_RISING,
                "The foam does not rise in these readings. Check that they are ratios to the liquid, in order of time.");
    }
}
