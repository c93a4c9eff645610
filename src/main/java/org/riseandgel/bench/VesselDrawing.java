package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.CENTIMETRE;
import static org.riseandgel.core.quantity.Unit.ONE;

import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;
import org.riseandgel.core.vessel.StickMarks;

/** A cut through the vessel, true in its proportions: liquid, foam at the wanted ratio, and the marks beside the wall. */
final class VesselDrawing {
    private static final double WIDTH = 400;
    private static final double HEIGHT = 320;
    private static final double FLOOR = 296;
    private static final double MIDDLE = 150;
    private static final double MOST_WIDE = 240;
    private static final double MOST_HIGH = 260;
    private static final double LABEL_GAP = 17;

    private final Given given;
    private final Outcome outcome;
    private final QuantityText text;
    private final double depth;
    private final double bottom;
    private final double top;
    private final double scale;

    VesselDrawing(Given given, Outcome outcome, QuantityText text) {
        this.given = given;
        this.outcome = outcome;
        this.text = text;
        this.depth = given.get(MarkStick.DEPTH, Length.class).inMillimetres();
        this.bottom = given.get(MarkStick.BOTTOM, Length.class).inMillimetres();
        this.top = MarkStick.isTapered(given)
                ? given.get(MarkStick.TOP, Length.class).inMillimetres()
                : bottom;
        this.scale = Math.min(MOST_HIGH / depth, MOST_WIDE / Math.max(bottom, top));
    }

    String svg() {
        Svg svg = Svg.picture("vessel", "", WIDTH, HEIGHT, "The vessel, cut through the middle", description());
        filled(svg, "f-foam", height(MarkStick.MARK_HEIGHT));
        filled(svg, "f-liquid", height(MarkStick.LIQUID_HEIGHT));
        svg.path("f-line", false, left(depth), up(depth), left(0), FLOOR, right(0), FLOOR, right(depth), up(depth));
        marks(svg);
        double wanted = height(MarkStick.MARK_HEIGHT);
        svg.line("f-accent", left(wanted), up(wanted), MIDDLE + MOST_WIDE / 2 + 12, up(wanted));
        return svg.closed();
    }

    private void marks(Svg svg) {
        double x = MIDDLE + MOST_WIDE / 2 + 12;
        double wanted = height(MarkStick.MARK_HEIGHT);
        label(
                svg,
                "f-text-strong",
                x,
                wanted,
                given.get(MarkStick.RATIO, Ratio.class),
                outcome.results().get(MarkStick.MARK_HEIGHT));
        svg.line("f-thin", x, up(0), x, up(depth));
        double lastLabel = Double.NEGATIVE_INFINITY;
        for (StickMarks.Mark mark : whole().marks()) {
            double height = mark.height().inMillimetres();
            svg.line("f-thin", x - 6, up(height), x, up(height));
            boolean free = (height - lastLabel) * scale >= LABEL_GAP && Math.abs(height - wanted) * scale >= LABEL_GAP;
            if (free) {
                label(svg, "f-text", x, height, mark.ratio(), mark.height());
                lastLabel = height;
            }
        }
    }

    private StickMarks whole() {
        return StickMarks.whole(
                MarkStick.vessel(given),
                given.get(MarkStick.CHARGE, Volume.class),
                given.get(MarkStick.WHISK, Volume.class));
    }

    private void label(Svg svg, String look, double x, double height, Quantity ratio, Quantity written) {
        String words = text.of(ratio, ONE) + "×  " + text.toReadability(written, CENTIMETRE, 0.1);
        svg.words(look, 14, x + 6, up(height) + 5, words);
    }

    private void filled(Svg svg, String look, double height) {
        svg.path(look, true, left(0), FLOOR, left(height), up(height), right(height), up(height), right(0), FLOOR);
    }

    private String description() {
        return "The liquid stands %s high, the mark 1×. The mark for %s× is at %s, and %s are left below the rim."
                .formatted(
                        written(MarkStick.LIQUID_HEIGHT),
                        text.of(given.get(MarkStick.RATIO, Ratio.class), ONE),
                        written(MarkStick.MARK_HEIGHT),
                        written(MarkStick.FREEBOARD));
    }

    private String written(String result) {
        return text.toReadability(outcome.results().get(result), CENTIMETRE, 0.1);
    }

    private double height(String result) {
        return ((Length) outcome.results().get(result)).inMillimetres();
    }

    private double up(double height) {
        return FLOOR - height * scale;
    }

    private double left(double height) {
        return MIDDLE - half(height);
    }

    private double right(double height) {
        return MIDDLE + half(height);
    }

    private double half(double height) {
        return (bottom + (top - bottom) * height / depth) / 2 * scale;
    }
}
