package org.riseandgel.core.statistics;

/**
 * The rate at which a profile is lowest, sought in its logarithm: downhill from a start in doubling steps until the
 * slope turns, then by halving. Without a start, from the lowest of a grid over all rates that the places can tell.
 */
final class RateSearch {
    /** Below this share of 1/X a curve is straight to half of it; above 40/x₁ it is level to the last bit. */
    private static final double SLOWEST = 1e-5;

    private static final double FASTEST = 40;
    private static final int STEPS_PER_DECADE = 16;
    private static final int HALVINGS = 80;

    private final ApproachProfile profile;
    private final double slowest;
    private final double fastest;

    RateSearch(ApproachProfile profile) {
        this.profile = profile;
        slowest = StrictMath.log(SLOWEST / profile.last());
        fastest = StrictMath.log(FASTEST / profile.first());
    }

    /** The profile at the slowest rate: a straight line. */
    ApproachProfile.Best straight() {
        return at(slowest);
    }

    /** The profile at the fastest rate: level from the first place on. */
    ApproachProfile.Best level() {
        return at(fastest);
    }

    /** Whether a rate lies at the slow end of the search. */
    boolean isSlowest(double rate) {
        return StrictMath.log(rate) <= slowest + 0.1;
    }

    /** Whether a rate lies at the fast end of the search. */
    boolean isFastest(double rate) {
        return StrictMath.log(rate) >= fastest - 0.1;
    }

    /** The lowest point of the profile. */
    ApproachProfile.Best lowest() {
        int steps = (int) StrictMath.ceil((fastest - slowest) / StrictMath.log(10) * STEPS_PER_DECADE);
        double step = (fastest - slowest) / steps;
        double best = slowest;
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= steps; i++) {
            double sum = at(slowest + i * step).residualSum();
            if (sum < lowest) {
                lowest = sum;
                best = slowest + i * step;
            }
        }
        return downhill(best, step);
    }

    /** The low point downhill from a start. */
    ApproachProfile.Best lowestFrom(double rate) {
        double start = Math.max(slowest, Math.min(fastest, StrictMath.log(rate)));
        return downhill(start, StrictMath.log(2));
    }

    private ApproachProfile.Best downhill(double start, double firstStep) {
        double here = start;
        double way = at(here).steepness() > 0 ? -1 : 1;
        for (double step = firstStep; ; step *= 2) {
            double next = Math.max(slowest, Math.min(fastest, here + way * step));
            if (at(next).steepness() * way >= 0) {
                return halved(Math.min(here, next), Math.max(here, next));
            }
            if (next == here || next == slowest || next == fastest) {
                return at(next);
            }
            here = next;
        }
    }

    private ApproachProfile.Best halved(double low, double high) {
        double below = low;
        double above = high;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = below + (above - below) / 2;
            if (at(middle).steepness() > 0) {
                above = middle;
            } else {
                below = middle;
            }
        }
        return at(below + (above - below) / 2);
    }

    private ApproachProfile.Best at(double logRate) {
        return profile.at(StrictMath.exp(logRate));
    }
}
