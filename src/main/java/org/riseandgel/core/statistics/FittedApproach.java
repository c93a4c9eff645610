package org.riseandgel.core.statistics;

import java.util.Optional;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealVector;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.OutOfRangeException;

/**
 * A fitted curve y = b₀ + b₁·(1 − e^(−b₂·x)) with what is known of its errors.
 *
 * <p>The covariance of (b₀, b₁, b₂) is s²·(JᵀJ)⁻¹, J being the derivatives of the curve at the readings and s the
 * residual standard deviation pooled with what was known before (see {@link ReadingNoise}). It rests on the curve being
 * nearly flat in its parameters over their errors; where it is not, {@link #doubt} says so first.
 */
public final class FittedApproach implements ApproachFit {
    private final Curve curve;
    private final ParameterErrors errors;
    private final Scatter scatter;

    /** The parameters; a curve through the origin has no offset of its own. */
    record Curve(boolean offset, double start, double amplitude, double rate) {
        /** d/db₀, d/db₁, d/d(ln b₂) at x, the first left out through the origin. */
        RealVector slopes(double x) {
            double turned = rate * x;
            return form(1, -StrictMath.expm1(-turned), amplitude * turned * StrictMath.exp(-turned));
        }

        RealVector form(double ofStart, double ofAmplitude, double ofLogRate) {
            return MatrixUtils.createRealVector(
                    offset ? new double[] {ofStart, ofAmplitude, ofLogRate} : new double[] {ofAmplitude, ofLogRate});
        }
    }

    /** How far the readings lie from the curve, and from the two curves that would tell nothing. */
    record Scatter(
            double residualSum, double straightSum, double levelSum, double deviation, double degreesOfFreedom) {}

    FittedApproach(Curve curve, ParameterErrors errors, Scatter scatter) {
        this.curve = curve;
        this.errors = errors;
        this.scatter = scatter;
    }

    /** b₀, in the unit of y; zero for a curve through the origin. */
    public double start() {
        return curve.start();
    }

    /** b₁, in the unit of y; negative when the curve falls. */
    public double amplitude() {
        return curve.amplitude();
    }

    /** b₂, in one over the unit of x. */
    public double rate() {
        return curve.rate();
    }

    /** The level it tends to, b₀ + b₁. */
    public double level() {
        return start() + amplitude();
    }

    /** The standard error of b₀; zero for a curve through the origin. */
    public double startError() {
        return error(curve.form(1, 0, 0));
    }

    /** The standard error of b₁. */
    public double amplitudeError() {
        return error(curve.form(0, 1, 0));
    }

    /** The standard error of b₂. */
    public double rateError() {
        return error(curve.form(0, 0, 1)) * rate();
    }

    /** The standard error of b₀ + b₁. */
    public double levelError() {
        return error(curve.form(1, 1, 0));
    }

    /** Σ(y − curve)². */
    public double residualSum() {
        return scatter.residualSum();
    }

    /** s, the standard deviation of one reading, in the unit of y. */
    public double deviation() {
        return scatter.deviation();
    }

    /** The degrees of freedom on which s rests. */
    public double degreesOfFreedom() {
        return scatter.degreesOfFreedom();
    }

    /**
     * Whether the readings, at this probability, leave open that there is no level ahead (a straight line) or no rate
     * (level from the first reading on): extra sum of squares ÷ s² against F(1, ν) = t².
     */
    public Optional<CannotTell> doubt(double probability) {
        double reach = Student.factor(probability, degreesOfFreedom()) * deviation();
        double open = residualSum() + reach * reach;
        if (scatter.straightSum() <= open) {
            return Optional.of(new CannotTell(Doubt.STRAIGHT));
        }
        return scatter.levelSum() <= open ? Optional.of(new CannotTell(Doubt.LEVEL)) : Optional.empty();
    }

    /** The curve at x of zero or more. */
    public double at(double x) {
        return start() - amplitude() * StrictMath.expm1(-rate() * Checks.notNegative("x", x));
    }

    /** Where the curve itself is at x of zero or more. */
    public Estimate curveAt(double x, double probability) {
        return Estimate.of(at(x), curveError(x), degreesOfFreedom(), probability);
    }

    /** Where one new reading at x of zero or more will lie. */
    public Estimate readingAt(double x, double probability) {
        return Estimate.of(at(x), readingError(x), degreesOfFreedom(), probability);
    }

    /** The standard error of the curve at x of zero or more, by the delta method. */
    public double curveError(double x) {
        return error(curve.slopes(Checks.notNegative("x", x)));
    }

    /** The standard error of one new reading at x of zero or more: √(s² + curve error²). */
    public double readingError(double x) {
        return StrictMath.hypot(deviation(), curveError(x));
    }

    /**
     * The x at which the curve is at y: −ln(1 − (y − b₀) ÷ b₁) ÷ b₂.
     *
     * @throws OutOfRangeException when y is before the start, or at the level or beyond
     */
    public double placeOf(double y) {
        double share = (y - start()) / amplitude();
        if (!(share >= 0 && share < 1)) {
            throw OutOfRangeException.because(
                    "y", "y is %s, must be from %s to less than the level %s".formatted(y, start(), level()));
        }
        return -StrictMath.log1p(-share) / rate();
    }

    private double error(RealVector form) {
        return deviation() * errors.of(form);
    }
}
