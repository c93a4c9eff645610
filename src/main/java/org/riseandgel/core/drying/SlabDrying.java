package org.riseandgel.core.drying;

import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.OutOfRangeException;

/**
 * Water leaving a slab by diffusion through both faces, the faces being dry from the start.
 *
 * <p>With the Fourier number Fo = D·t ÷ L², D the diffusivity in m²/s, t the time in s, L half the thickness in m, and λₙ =
 * (2n + 1)·π/2, the share of water left is
 *
 * <p>mean over the thickness: Σ 2 ÷ λₙ²·e^(−λₙ²·Fo), centre: Σ 2·(−1)ⁿ ÷ λₙ·e^(−λₙ²·Fo).
 *
 * <p>Before Fo = 0.001, where the sums converge slowly, the mean is 1 − 2·√(Fo/π) and the centre still 1, both to the
 * last digit. Source: J. Crank, The Mathematics of Diffusion, plane sheet (from memory).
 */
public final class SlabDrying {
    private static final double EARLY = 1e-3;
    private static final double NOTHING_LEFT_IN_DIGITS = 40;
    private static final double LATEST = 1e3;
    private static final int HALVINGS = 200;

    private SlabDrying() {}

    /** The mean share of water left at a Fourier number from 0 to 1,000. */
    public static double meanLeft(double fourier) {
        if (checked(fourier) < EARLY) {
            return 1 - 2 * StrictMath.sqrt(fourier / Math.PI);
        }
        double sum = 0;
        for (int n = 0; exponent(n, fourier) < NOTHING_LEFT_IN_DIGITS || n == 0; n++) {
            sum += 2 / (root(n) * root(n)) * StrictMath.exp(-exponent(n, fourier));
        }
        return sum;
    }

    /** The share of water left in the middle of the slab at a Fourier number from 0 to 1,000. */
    public static double centreLeft(double fourier) {
        if (checked(fourier) < EARLY) {
            return 1;
        }
        double sum = 0;
        for (int n = 0; exponent(n, fourier) < NOTHING_LEFT_IN_DIGITS || n == 0; n++) {
            sum += (n % 2 == 0 ? 2 : -2) / root(n) * StrictMath.exp(-exponent(n, fourier));
        }
        return Math.min(1, sum);
    }

    /**
     * The Fourier number at which a mean share is left: the inverse of {@link #meanLeft}.
     *
     * @param share from 10⁻¹² to 1
     * @throws OutOfRangeException outside
     */
    public static double fourierForMeanLeft(double share) {
        Checks.inRange("share left", share, 1e-12, 1);
        double low = 0;
        double high = 20;
        for (int i = 0; i < HALVINGS && low < high; i++) {
            double middle = low + (high - low) / 2;
            if (middle == low || middle == high) {
                break;
            }
            if (meanLeft(middle) > share) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return share == 1 ? 0 : low + (high - low) / 2;
    }

    private static double checked(double fourier) {
        return Checks.inRange("Fourier number", fourier, 0, LATEST);
    }

    private static double root(int n) {
        return (2 * n + 1) * Math.PI / 2;
    }

    private static double exponent(int n, double fourier) {
        return root(n) * root(n) * fourier;
    }
}
