package org.riseandgel.core.statistics;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.RealVector;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.OutOfRangeException;

/**
 * Least-squares fit of an exponential approach, y = b₀ + b₁·(1 − e^(−b₂·x)).
 *
 * <p>b₀ is where it starts, b₀ + b₁ the level it tends to, b₂ > 0 the rate in one over the unit of x; x is zero or more.
 * For a given b₂ the rest is linear, so that only b₂ is searched: the fit needs no start and finds the lowest of several
 * low points. The order of the readings is of no account. What the readings cannot tell is an outcome and no exception.
 */
public final class ExponentialApproach {
    private static final Comparator<Point> BY_PLACE =
            Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y);

    private final boolean offset;
    private final ReadingNoise noise;

    private ExponentialApproach(boolean offset, ReadingNoise noise) {
        this.offset = offset;
        this.noise = noise;
    }

    /** The curve through the origin, b₀ = 0: two unknowns. */
    public static ExponentialApproach throughOrigin(ReadingNoise noise) {
        return new ExponentialApproach(false, noise);
    }

    /** The curve from an unknown start: three unknowns. */
    public static ExponentialApproach fromUnknownStart(ReadingNoise noise) {
        return new ExponentialApproach(true, noise);
    }

    /**
     * The best fit.
     *
     * @throws OutOfRangeException when a place is below zero
     */
    public ApproachFit fit(List<Point> points) {
        return fit(points, Optional.empty());
    }

    /**
     * As {@link #fit(List)}, but downhill from a start for b₂, which is more than zero; b₀ and b₁ need none. It shows
     * that the outcome does not hang on where the search begins.
     */
    public ApproachFit fitFrom(double startRate, List<Point> points) {
        return fit(points, Optional.of(Checks.positive("start for the rate", startRate)));
    }

    private ApproachFit fit(List<Point> points, Optional<Double> start) {
        points.forEach(point -> Checks.notNegative("x", point.x()));
        if (isTooFew(points)) {
            return new ApproachFit.CannotTell(ApproachFit.Doubt.TOO_FEW);
        }
        List<Point> sorted = points.stream().sorted(BY_PLACE).toList();
        ApproachProfile profile = new ApproachProfile(sorted, offset);
        RateSearch search = new RateSearch(profile);
        ApproachProfile.Best best = start.map(search::lowestFrom).orElseGet(search::lowest);
        Optional<ApproachFit.Doubt> doubt = doubt(search, best);
        return doubt.isPresent()
                ? new ApproachFit.CannotTell(doubt.get())
                : fitted(sorted, search, best, best.riseAtLast() / profile.reached(best.rate()));
    }

    private static Optional<ApproachFit.Doubt> doubt(RateSearch search, ApproachProfile.Best best) {
        if (best.riseAtLast() == 0) {
            return Optional.of(ApproachFit.Doubt.NO_CHANGE);
        }
        if (search.isSlowest(best.rate())) {
            return Optional.of(ApproachFit.Doubt.STRAIGHT);
        }
        return search.isFastest(best.rate()) ? Optional.of(ApproachFit.Doubt.LEVEL) : Optional.empty();
    }

    private ApproachFit fitted(List<Point> points, RateSearch search, ApproachProfile.Best best, double amplitude) {
        FittedApproach.Curve curve = new FittedApproach.Curve(offset, best.offset(), amplitude, best.rate());
        List<RealVector> slopes =
                points.stream().map(point -> curve.slopes(point.x())).toList();
        int residual = points.size() - unknowns();
        FittedApproach.Scatter scatter = new FittedApproach.Scatter(
                best.residualSum(),
                search.straight().residualSum(),
                search.level().residualSum(),
                noise.pooled(best.residualSum(), residual),
                noise.degreesOfFreedom(residual));
        return ParameterErrors.of(slopes)
                .<ApproachFit>map(errors -> new FittedApproach(curve, errors, scatter))
                .orElseGet(() -> new ApproachFit.CannotTell(ApproachFit.Doubt.STRAIGHT));
    }

    private boolean isTooFew(List<Point> points) {
        long places = points.stream()
                .mapToDouble(Point::x)
                .filter(x -> offset || x > 0)
                .distinct()
                .count();
        return places < unknowns() || noise.degreesOfFreedom(points.size() - unknowns()) <= 0;
    }

    private int unknowns() {
        return offset ? 3 : 2;
    }
}
