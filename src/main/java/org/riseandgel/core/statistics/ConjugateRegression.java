package org.riseandgel.core.statistics;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.OutOfRangeException;

/**
 * Linear regression y = x·β + noise that starts from a belief and learns (conjugate normal–inverse-gamma model).
 *
 * <p>Belief: σ² is scaled inverse χ² with ν₀ degrees of freedom and scale s₀²; given σ, βⱼ is normal around mⱼ with
 * standard deviation rⱼ·σ, independently; a record of weight w has noise of variance σ²/w. After n records, with ỹ = y −
 * x·m, Λ = diag(rⱼ⁻²) + Σw·x·xᵀ and η = Σw·x·ỹ:
 *
 * <p>β̂ = m + Λ⁻¹·η, ν = ν₀ + n, ν·s² = ν₀·s₀² + Σw·ỹ² − ηᵀ·Λ⁻¹·η, and a new record at x is Student's t with ν degrees of
 * freedom about x·β̂ with scale s·√(1 + xᵀ·Λ⁻¹·x).
 *
 * <p>As every rⱼ is finite, Λ can always be inverted, however alike the records are. Source: A. Gelman and others, Bayesian
 * Data Analysis, chapter on regression (from memory).
 */
public final class ConjugateRegression {
    private final RealVector belief;
    private final RealMatrix precision;
    private final RealVector pull;
    private final double squares;
    private final double degreesOfFreedom;

    /** One record: what it was taken at, what was seen, and its weight of more than zero. */
    public record Row(List<Double> x, double y, double weight) {
        public Row {
            x = List.copyOf(x);
            x.forEach(value -> Checks.finite("x", value));
            Checks.finite("y", y);
            Checks.positive("weight", weight);
        }

        /** The same record with another weight. */
        public Row weighing(double other) {
            return new Row(x, y, other);
        }
    }

    /** A coefficient as believed beforehand: its middle, and its standard deviation in units of the noise's. */
    public record Belief(double middle, double relativeDeviation) {
        public Belief {
            Checks.finite("middle", middle);
            Checks.positive("relative deviation", relativeDeviation);
        }
    }

    private ConjugateRegression(
            RealVector belief, RealMatrix precision, RealVector pull, double squares, double degreesOfFreedom) {
        this.belief = belief;
        this.precision = precision;
        this.pull = pull;
        this.squares = squares;
        this.degreesOfFreedom = degreesOfFreedom;
    }

    /**
     * The belief before any record.
     *
     * @param noise s₀, more than zero, and ν₀, more than zero
     */
    public static ConjugateRegression believing(List<Belief> coefficients, ReadingNoise noise) {
        double worth = Checks.positive("worth in degrees of freedom", noise.worth());
        double deviation = Checks.positive("standard deviation", noise.deviation());
        int size = coefficients.size();
        RealVector belief = MatrixUtils.createRealVector(
                coefficients.stream().mapToDouble(Belief::middle).toArray());
        RealMatrix precision = MatrixUtils.createRealDiagonalMatrix(coefficients.stream()
                .mapToDouble(c -> 1 / (c.relativeDeviation() * c.relativeDeviation()))
                .toArray());
        return new ConjugateRegression(
                belief,
                precision,
                MatrixUtils.createRealVector(new double[size]),
                worth * deviation * deviation,
                worth);
    }

    /** What is believed after one more record. */
    public ConjugateRegression with(Row row) {
        return changed(row, 1);
    }

    /** What would be believed without a record that was learned with this weight: the inverse of {@link #with}. */
    public ConjugateRegression without(Row row) {
        return changed(row, -1);
    }

    /** What a new record of weight 1 at x will be. */
    public StudentForecast at(List<Double> x) {
        RealVector place = vector(x);
        CholeskyDecomposition factors = factors();
        RealVector shift = factors.getSolver().solve(pull);
        double spread = 1 + place.dotProduct(factors.getSolver().solve(place));
        return new StudentForecast(
                place.dotProduct(belief.add(shift)), StrictMath.sqrt(variance(shift) * spread), degreesOfFreedom);
    }

    /** The coefficients as believed now. */
    public List<Double> coefficients() {
        RealVector now = belief.add(factors().getSolver().solve(pull));
        return Arrays.stream(now.toArray()).boxed().toList();
    }

    /** s, the standard deviation of the noise as believed now. */
    public double deviation() {
        return StrictMath.sqrt(variance(factors().getSolver().solve(pull)));
    }

    /** ν. */
    public double degreesOfFreedom() {
        return degreesOfFreedom;
    }

    private double variance(RealVector shift) {
        return Math.max(0, squares - pull.dotProduct(shift)) / degreesOfFreedom;
    }

    private ConjugateRegression changed(Row row, int sign) {
        RealVector x = vector(row.x());
        double fromBelief = row.y() - x.dotProduct(belief);
        double weight = sign * row.weight();
        return new ConjugateRegression(
                belief,
                precision.add(x.outerProduct(x).scalarMultiply(weight)),
                pull.add(x.mapMultiply(weight * fromBelief)),
                squares + weight * fromBelief * fromBelief,
                degreesOfFreedom + sign);
    }

    private CholeskyDecomposition factors() {
        return new CholeskyDecomposition(precision);
    }

    private RealVector vector(List<Double> x) {
        if (x.size() != belief.getDimension()) {
            throw OutOfRangeException.because(
                    "x", "x has %d numbers, must have %d".formatted(x.size(), belief.getDimension()));
        }
        return MatrixUtils.createRealVector(
                x.stream().mapToDouble(Double::doubleValue).toArray());
    }
}
