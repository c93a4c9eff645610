package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.CENTIMETRE;
import static org.riseandgel.core.quantity.Unit.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;
import org.riseandgel.core.vessel.StickMarks;
import org.riseandgel.core.vessel.Vessel;

/**
 * A volume stick as strips to print at true scale: one unit of a strip's view box is one millimetre on paper. The left end
 * stands on the floor of the vessel; words read upright once the strip is stood up. A stick that is longer than a strip is
 * cut into parts of 240 mm with a tab of 10 mm to glue the next part on.
 */
final class StickStrips {
    static final double STRIP_LENGTH = 250;
    static final double STRIP_WIDTH = 25;
    private static final double PART_LENGTH = 240;
    private static final double LABEL_ROOM = 4.5;
    private static final double LABEL_TOP = 8;
    private static final double CHARACTER_WIDTH = 2.1;
    /** A mark at the very end of a part belongs to it. */
    private static final double HAIR = 1e-9;

    private final StickMarks marks;
    private final double wanted;
    private final double depth;
    private final QuantityText text;

    StickStrips(Given given, QuantityText text) {
        Vessel vessel = MarkStick.vessel(given);
        Ratio ratio = given.get(MarkStick.RATIO, Ratio.class);
        this.marks = marks(vessel, given, ratio);
        this.wanted = ratio.asNumber();
        this.depth = vessel.depth().inMillimetres();
        this.text = text;
    }

    /** The strips as SVG, from the floor up. */
    List<String> svgs() {
        int parts = parts();
        return IntStream.range(0, parts).mapToObj(part -> strip(part, parts)).toList();
    }

    private int parts() {
        if (depth <= STRIP_LENGTH) {
            return 1;
        }
        return 1 + (int) Math.ceil((depth - STRIP_LENGTH) / PART_LENGTH);
    }

    private String strip(int part, int parts) {
        double from = part * PART_LENGTH;
        double to = part == parts - 1 ? depth : from + PART_LENGTH;
        Svg svg = Svg.picture(
                "strip-" + (part + 1),
                "width=\"250mm\" height=\"25mm\"",
                STRIP_LENGTH,
                STRIP_WIDTH,
                "Strip %d of %d".formatted(part + 1, parts),
                description(from, to));
        svg.rectangle("cut", 0, 0, STRIP_LENGTH, STRIP_WIDTH);
        drawMarks(svg, from, to);
        ends(svg, part, parts, to - from);
        return svg.closed();
    }

    private void drawMarks(Svg svg, double from, double to) {
        double lastLabel = Double.NEGATIVE_INFINITY;
        for (StickMarks.Mark mark : within(from, to)) {
            double at = mark.height().inMillimetres() - from;
            boolean isWanted = mark.ratio().asNumber() == wanted;
            svg.line(isWanted ? "tick wanted" : "tick", at, 0, at, isWanted ? 7.5 : 6.5);
            if (isWanted || at - lastLabel >= LABEL_ROOM) {
                label(svg, at, mark, isWanted ? "strong" : "plain");
                lastLabel = at;
            }
        }
    }

    private void label(Svg svg, double at, StickMarks.Mark mark, String look) {
        String ratio = text.of(mark.ratio(), ONE) + "×";
        svg.wordsDown(look, 3.6, at - 1.2, LABEL_TOP, ratio);
        svg.wordsDown(
                "plain",
                2.4,
                at - 0.8,
                LABEL_TOP + 0.8 + CHARACTER_WIDTH * ratio.length(),
                text.toReadability(mark.height(), CENTIMETRE, 0.1));
    }

    private void ends(Svg svg, int part, int parts, double length) {
        svg.line("edge", 0, 0, 0, STRIP_WIDTH);
        svg.wordsDown("plain", 2.5, 1.4, 13, part == 0 ? "Floor end" : "On to part " + part);
        svg.line("edge", length, 0, length, STRIP_WIDTH);
        boolean last = part == parts - 1;
        if (length + 6 <= STRIP_LENGTH) {
            String words = last ? "Rim: cut here" : "Glue part %d on here".formatted(part + 2);
            svg.wordsDown("plain", 2.5, length + 2, 3, words);
        }
        if (parts > 1) {
            svg.wordsDown("plain", 2.5, 4.2, 13, "Part %d/%d".formatted(part + 1, parts));
        }
    }

    private List<StickMarks.Mark> within(double from, double to) {
        return marks.marks().stream()
                .filter(mark -> mark.height().inMillimetres() >= from - HAIR)
                .filter(mark -> mark.height().inMillimetres() <= to + HAIR)
                .toList();
    }

    private String description(double from, double to) {
        List<String> words = within(from, to).stream()
                .map(mark -> "%s× at %s"
                        .formatted(text.of(mark.ratio(), ONE), text.toReadability(mark.height(), CENTIMETRE, 0.1)))
                .toList();
        return "From %s to %s above the floor. Marks: %s."
                .formatted(
                        text.of(Length.ofMillimetres(from), CENTIMETRE),
                        text.of(Length.ofMillimetres(to), CENTIMETRE),
                        words.isEmpty() ? "none" : String.join(", ", words));
    }

    /** The whole marks and the wanted one among them, rising. */
    private static StickMarks marks(Vessel vessel, Given given, Ratio wanted) {
        Volume charge = given.get(MarkStick.CHARGE, Volume.class);
        Volume whisk = given.get(MarkStick.WHISK, Volume.class);
        List<Ratio> ratios = new ArrayList<>(StickMarks.whole(vessel, charge, whisk).marks().stream()
                .map(StickMarks.Mark::ratio)
                .toList());
        if (!ratios.contains(wanted)) {
            ratios.add(wanted);
            ratios.sort((one, other) -> Double.compare(one.asNumber(), other.asNumber()));
        }
        return StickMarks.of(vessel, charge, ratios, whisk);
    }
}
