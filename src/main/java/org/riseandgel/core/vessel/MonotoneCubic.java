package org.riseandgel.core.vessel;

/**
 * A smooth, strictly rising curve through strictly rising points: piecewise cubic Hermite with limited slopes (F. N.
 * Fritsch and R. E. Carlson, SIAM Journal on Numerical Analysis 17, 1980; slopes by the harmonic mean of Fritsch and
 * Butland, 1984; from memory).
 *
 * <p>No slope is more than twice a chord beside it, well inside the limit of three that keeps the curve rising, and none
 * is zero, so that the inverse is well conditioned too. Straight rows give a straight curve.
 */
final class MonotoneCubic {
    private static final double STEEPEST = 2;
    private static final double FLATTEST_END = 0.25;
    private static final int MOST_HALVINGS = 200;

    private final double[] places;
    private final double[] values;
    private final double[] slopes;

    private MonotoneCubic(double[] places, double[] values, double[] slopes) {
        this.places = places;
        this.values = values;
        this.slopes = slopes;
    }

    /** Through two or more points that rise strictly in both; the caller has checked it. */
    static MonotoneCubic through(double[] places, double[] values) {
        return new MonotoneCubic(places, values, slopes(places, values));
    }

    /** The value at a place between the first and the last. */
    double valueAt(double place) {
        int piece = pieceOf(places, place);
        double value = at(piece, (place - places[piece]) / width(piece));
        // Rounding must not carry the curve past its own points: the last one is the rim.
        return Math.max(values[piece], Math.min(values[piece + 1], value));
    }

    /** The place of a value between the first and the last: the inverse, to the last bits of a double. */
    double placeOf(double value) {
        int piece = pieceOf(values, value);
        return Math.min(places[piece + 1], places[piece] + shareOf(piece, value) * width(piece));
    }

    /** Newton's steps, halved back into the bracket whenever they leave it. */
    private double shareOf(int piece, double value) {
        double low = 0;
        double high = 1;
        double share = (value - values[piece]) / (values[piece + 1] - values[piece]);
        for (int i = 0; i < MOST_HALVINGS; i++) {
            double error = at(piece, share) - value;
            if (error == 0) {
                return share;
            }
            if (error < 0) {
                low = share;
            } else {
                high = share;
            }
            double next = share - error / steepnessAt(piece, share);
            if (!(next > low && next < high)) {
                next = low + (high - low) / 2;
            }
            if (next == share || next <= low || next >= high) {
                return share;
            }
            share = next;
        }
        return share;
    }

    private double at(int piece, double t) {
        double rise = values[piece + 1] - values[piece];
        double start = slopes[piece] * width(piece);
        double end = slopes[piece + 1] * width(piece);
        return values[piece] + t * (start + t * ((3 * rise - 2 * start - end) + t * (start + end - 2 * rise)));
    }

    private double steepnessAt(int piece, double t) {
        double rise = values[piece + 1] - values[piece];
        double start = slopes[piece] * width(piece);
        double end = slopes[piece + 1] * width(piece);
        return start + t * (2 * (3 * rise - 2 * start - end) + t * 3 * (start + end - 2 * rise));
    }

    private double width(int piece) {
        return places[piece + 1] - places[piece];
    }

    private static int pieceOf(double[] rising, double wanted) {
        int piece = 0;
        while (piece < rising.length - 2 && wanted >= rising[piece + 1]) {
            piece++;
        }
        return piece;
    }

    private static double[] slopes(double[] places, double[] values) {
        int last = places.length - 1;
        double[] slopes = new double[places.length];
        for (int i = 1; i < last; i++) {
            slopes[i] = middleSlope(chord(places, values, i - 1), chord(places, values, i));
        }
        slopes[0] = endSlope(chord(places, values, 0), last == 1 ? chord(places, values, 0) : slopes[1]);
        slopes[last] =
                endSlope(chord(places, values, last - 1), last == 1 ? chord(places, values, 0) : slopes[last - 1]);
        return slopes;
    }

    private static double chord(double[] places, double[] values, int piece) {
        return (values[piece + 1] - values[piece]) / (places[piece + 1] - places[piece]);
    }

    private static double middleSlope(double before, double after) {
        return 2 / (1 / before + 1 / after);
    }

    /** The end slope that makes the end piece a parabola, limited. */
    private static double endSlope(double chord, double inner) {
        return Math.min(STEEPEST * chord, Math.max(FLATTEST_END * chord, 2 * chord - inner));
    }
}
