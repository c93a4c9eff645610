package org.riseandgel.practice;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A calibration drawn as bars, one for each word, from 0 to 100 per cent right; a bar of few answers is hatched.
 *
 * @param description the chart in words, for who cannot see it
 */
public record CalibrationChart(Calibration calibration, List<Bar> bars, String description) {
    private static final int LEFT = 110;
    private static final int FULL = 240;
    private static final int TOP = 16;
    private static final int STEP = 46;
    private static final int HEIGHT = 26;

    public CalibrationChart {
        bars = List.copyOf(bars);
    }

    /** A bar: where it lies, how long it is and what stands beside it. */
    public record Bar(int x, int y, int width, int height, String word, String label, boolean few) {
        /** Where text stands that goes with it. */
        public int textY() {
            return y + height - 8;
        }

        /** Where the label after the bar begins. */
        public int labelX() {
            return x + FULL + 8;
        }
    }

    static CalibrationChart of(Calibration calibration) {
        List<Bar> bars = IntStream.range(0, calibration.lines().size())
                .mapToObj(i -> bar(i, calibration.lines().get(i)))
                .toList();
        List<String> words =
                bars.stream().map(bar -> bar.word + ": " + bar.label).toList();
        return new CalibrationChart(calibration, bars, String.join("; ", words));
    }

    private static Bar bar(int index, Calibration.Line line) {
        String label = line.answers() == 0
                ? "none yet"
                : "%d %% (%d of %d)".formatted(line.percent(), line.right(), line.answers());
        return new Bar(
                LEFT,
                TOP + STEP * index,
                (int) Math.round(FULL * line.share()),
                HEIGHT,
                line.confidence().words(),
                label,
                line.isFew());
    }
}
