package org.riseandgel.core.drying;

import java.util.List;
import java.util.Optional;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.statistics.ApproachFit;
import org.riseandgel.core.statistics.ExponentialApproach;
import org.riseandgel.core.statistics.FittedApproach;
import org.riseandgel.core.statistics.Point;
import org.riseandgel.core.statistics.ReadingNoise;

/**
 * Fits m(t) = m∞ + (m₀ − m∞)·e^(−k·t) to weighings of a drying piece by least squares.
 *
 * <p>m is the mass in g, t the time since the first weighing in h, m₀ the mass then, m∞ the dry mass, k > 0 in one per
 * hour. All three are fitted. It holds for the falling part of drying, when water comes from within: a wet piece that
 * still loses water evenly gives a straight line, and then there is no answer yet. The form is the first term of the
 * diffusion series (see {@link SlabDrying}).
 */
public final class WeighBack {
    /** The scatter that the balance's display alone makes is worth four weighings. Common practice, no source. */
    private static final double WORTH = 4;

    private static final double SURE = 0.9;
    private static final int FEWEST = 3;

    private WeighBack() {}

    /**
     * The curve through weighings in any order.
     *
     * @param readability the step d of the balance's display, more than zero; its d ÷ (2·√3) stands for the scatter of a
     *     weighing as far as there are too few to tell
     */
    public static DryingOutcome of(List<PieceWeighing> weighings, Mass readability) {
        double step = Checks.positive("readability in grams", readability.inGrams());
        if (weighings.stream().map(PieceWeighing::time).distinct().count() < FEWEST) {
            return new DryingOutcome.CannotTell(
                    DryingOutcome.Reason.TOO_FEW, "Weigh the piece at three or more different times.");
        }
        double first = weighings.stream()
                .mapToDouble(weighing -> weighing.time().inHours())
                .min()
                .orElseThrow();
        List<Point> points = weighings.stream()
                .map(weighing -> new Point(
                        weighing.time().inHours() - first, weighing.mass().inGrams()))
                .toList();
        ReadingNoise noise = new ReadingNoise(step / StrictMath.sqrt(12), WORTH);
        return outcome(ExponentialApproach.fromUnknownStart(noise).fit(points), first);
    }

    private static DryingOutcome outcome(ApproachFit fit, double first) {
        if (fit instanceof FittedApproach curve) {
            return outcome(curve, first);
        }
        return cannotTell(((ApproachFit.CannotTell) fit).doubt());
    }

    private static DryingOutcome outcome(FittedApproach curve, double first) {
        if (curve.amplitude() >= 0) {
            return notDrying();
        }
        Optional<ApproachFit.CannotTell> doubt = curve.doubt(SURE);
        if (doubt.isPresent()) {
            return cannotTell(doubt.get().doubt());
        }
        return curve.level() > 0 ? new DryingCurve(curve, first) : cannotTell(ApproachFit.Doubt.STRAIGHT);
    }

    private static DryingOutcome cannotTell(ApproachFit.Doubt doubt) {
        return switch (doubt) {
            case TOO_FEW -> new DryingOutcome.CannotTell(DryingOutcome.Reason.TOO_FEW, doubt.words());
            case NO_CHANGE, LEVEL -> notDrying();
            case STRAIGHT ->
                new DryingOutcome.CannotTell(
                        DryingOutcome.Reason.NOT_LEVELLING,
                        "The piece loses water as fast as before, so the weighings do not tell when it will be dry."
                                + " Leave it in and weigh again later.");
        };
    }

    private static DryingOutcome notDrying() {
        return new DryingOutcome.CannotTell(
                DryingOutcome.Reason.NOT_DRYING,
                "The piece does not get lighter from weighing to weighing: it is dry, or the weighings are mixed up.");
    }
}
