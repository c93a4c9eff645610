package org.riseandgel.core.statistics;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.riseandgel.core.quantity.Checks;
import org.riseandgel.core.quantity.OutOfRangeException;

/**
 * Wilson's score interval for a share, good down to none and up to all of a handful.
 *
 * <p>With p = right ÷ n and z the normal quantile: (p + z²/2n ± z·√(p(1 − p)/n + z²/4n²)) ÷ (1 + z²/n). Source: E. B.
 * Wilson, Journal of the American Statistical Association 22, 1927; method 3 of R. G. Newcombe, Statistics in Medicine
 * 17, 1998.
 */
public final class Wilson {
    private static final NormalDistribution NORMAL = new NormalDistribution();

    private Wilson() {}

    /**
     * The interval of the share, within 0 to 1.
     *
     * @param right how many, from 0 to n
     * @param n of how many, 1 or more
     * @param probability of the interval, more than 0 and less than 1
     * @throws OutOfRangeException outside these
     */
    public static Interval interval(int right, int n, double probability) {
        Checks.inRange("number of tries", n, 1, Integer.MAX_VALUE);
        Checks.inRange("number right", right, 0, n);
        double z = NORMAL.inverseCumulativeProbability((1 + Probabilities.inside(probability)) / 2);
        double share = (double) right / n;
        double spread = z * z / n;
        double middle = share + spread / 2;
        double reach = StrictMath.sqrt(spread * (share * (1 - share) + spread / 4));
        return new Interval(
                right == 0 ? 0 : (middle - reach) / (1 + spread),
                right == n ? 1 : (middle + reach) / (1 + spread),
                probability);
    }
}
