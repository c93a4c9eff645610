package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.ONE;

import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import org.riseandgel.core.statistics.Interval;

/** Readings, the curve through them and the band in which readings fall. What lies beyond an axis is cut at its end. */
final class CurveChart {
    private static final double WIDTH = 600;
    private static final double HEIGHT = 340;
    private static final double LEFT = 64;
    private static final double RIGHT = 580;
    private static final double TOP = 32;
    private static final double FLOOR = 290;
    private static final int PIECES = 80;
    private static final double DOT = 4.5;
    private static final double LETTER = 9;

    private final Svg svg;
    private final Axis x;
    private final Axis y;

    /** What an axis shows, its unit included, and from where to where. */
    record Axis(String title, double low, double high) {}

    CurveChart(String id, String title, String description, Axis x, Axis y) {
        svg = Svg.picture(id, "", WIDTH, HEIGHT, title, description);
        this.x = x;
        this.y = y;
    }

    /** The band from low to high at each place from a place on. */
    CurveChart band(double from, DoubleFunction<Interval> at) {
        double[] points = new double[4 * (PIECES + 1)];
        for (int i = 0; i <= PIECES; i++) {
            double place = place(from, i);
            Interval interval = at.apply(place);
            points[2 * i] = right(place);
            points[2 * i + 1] = up(interval.high());
            points[points.length - 2 * i - 2] = right(place);
            points[points.length - 2 * i - 1] = up(interval.low());
        }
        svg.path("f-foam", true, points);
        return this;
    }

    /** A curve from a place on. */
    CurveChart curve(double from, DoubleUnaryOperator at) {
        double[] points = new double[2 * (PIECES + 1)];
        for (int i = 0; i <= PIECES; i++) {
            points[2 * i] = right(place(from, i));
            points[2 * i + 1] = up(at.applyAsDouble(place(from, i)));
        }
        svg.path("f-line", false, points);
        return this;
    }

    CurveChart reading(double atX, double atY) {
        svg.dot("f-accent-fill", right(atX), up(atY), DOT);
        return this;
    }

    /** A height across the whole chart, with words above it at its left end. */
    CurveChart level(double atY, String words) {
        svg.line("f-dash", LEFT, up(atY), RIGHT, up(atY));
        svg.words("f-text", 14, LEFT + 6, up(atY) - 5, words);
        return this;
    }

    /** A place marked from the floor up to a height, with words beside its foot. */
    CurveChart mark(double atX, double atY, String words) {
        svg.line("f-accent", right(atX), FLOOR, right(atX), up(atY));
        double room = RIGHT - right(atX) - LETTER * words.length();
        double start = room > 0 ? right(atX) + 6 : right(atX) - 6 - LETTER * words.length();
        svg.words("f-text-strong", 14, start, FLOOR - 8, words);
        return this;
    }

    /** The picture, axes drawn last; the figures are written as the reader writes them. */
    String svg(QuantityText text) {
        svg.line("f-line", LEFT, FLOOR, RIGHT, FLOOR);
        svg.line("f-line", LEFT, FLOOR, LEFT, TOP);
        Ticks.of(x.low(), x.high()).figures().forEach(value -> {
            svg.line("f-thin", right(value), FLOOR, right(value), FLOOR + 6);
            svg.words("f-text", 14, right(value) - 5, FLOOR + 22, text.of(value, ONE));
        });
        Ticks.of(y.low(), y.high()).figures().forEach(value -> {
            svg.line("f-thin", LEFT - 6, up(value), LEFT, up(value));
            svg.words("f-text", 14, 12, up(value) + 5, text.of(value, ONE));
        });
        svg.words("f-text", 14, LEFT, HEIGHT - 8, x.title());
        svg.words("f-text", 14, 12, TOP - 14, y.title());
        return svg.closed();
    }

    private double place(double from, int piece) {
        return from + (x.high() - from) * piece / PIECES;
    }

    private double right(double value) {
        return LEFT + (RIGHT - LEFT) * share(x, value);
    }

    private double up(double value) {
        return FLOOR - (FLOOR - TOP) * share(y, value);
    }

    private static double share(Axis axis, double value) {
        return Math.max(0, Math.min(1, (value - axis.low()) / (axis.high() - axis.low())));
    }
}
