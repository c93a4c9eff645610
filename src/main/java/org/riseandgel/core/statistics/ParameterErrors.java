package org.riseandgel.core.statistics;

import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** The covariance (JᵀJ)⁻¹ of fitted parameters for readings of unit variance, from J = Q·R. */
final class ParameterErrors {
    private static final double DEPENDENT = 1e-9;

    private final RealMatrix unscaled;

    private ParameterErrors(RealMatrix unscaled) {
        this.unscaled = unscaled;
    }

    /** From the derivatives at each reading; nothing when the parameters cannot be told apart. */
    static Optional<ParameterErrors> of(List<RealVector> slopes) {
        RealMatrix jacobian =
                MatrixUtils.createRealMatrix(slopes.size(), slopes.get(0).getDimension());
        for (int i = 0; i < slopes.size(); i++) {
            jacobian.setRowVector(i, slopes.get(i));
        }
        return of(jacobian);
    }

    /** The standard error of a linear form in the parameters. */
    double of(RealVector form) {
        return StrictMath.sqrt(Math.max(0, form.dotProduct(unscaled.operate(form))));
    }

    /** Columns are brought to length 1 first, so that units cannot make the matrix look singular. */
    private static Optional<ParameterErrors> of(RealMatrix jacobian) {
        int size = jacobian.getColumnDimension();
        RealMatrix scale = MatrixUtils.createRealMatrix(size, size);
        for (int i = 0; i < size; i++) {
            double length = jacobian.getColumnVector(i).getNorm();
            if (!(length > 0)) {
                return Optional.empty();
            }
            scale.setEntry(i, i, 1 / length);
        }
        RealMatrix upper = new QRDecomposition(jacobian.multiply(scale)).getR().getSubMatrix(0, size - 1, 0, size - 1);
        for (int i = 0; i < size; i++) {
            if (Math.abs(upper.getEntry(i, i)) < DEPENDENT) {
                return Optional.empty();
            }
        }
        RealMatrix half = scale.multiply(MatrixUtils.inverse(upper));
        return Optional.of(new ParameterErrors(half.multiplyTransposed(half)));
    }
}
