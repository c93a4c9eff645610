package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Unit;

class ForecastRiseTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final ForecastRise rise = new ForecastRise();
    private final Given usual = Given.defaultsOf(rise);

    /**
     * NIST StRD BoxBOD, divided by 100 and put on top of 1: b1 213.80940889 and b2 0.54723748542 are certified, so the
     * highest is 3.1380940889 and 2.5 is reached after −ln(1 − 1.5 ÷ 2.1380940889) ÷ 0.54723748542 = 2.20960 min.
     */
    private final Given boxBod = usual.reading(
                    "readings",
                    rows(new double[] {1, 2, 3, 5, 7, 10}, new double[] {2.09, 2.49, 2.49, 2.91, 3.13, 3.24}))
            .with("wanted", Ratio.of(2.5));

    @Test
    void readingsOfAPublishedDataSet() {
        Outcome outcome = catalogue.run(rise, boxBod);
        assertThat(outcome.results().get("highest").inBase()).isCloseTo(3.1380940889, within(1e-6));
        assertThat(outcome.step("rate").orElseThrow().value().in(Unit.PER_MINUTE))
                .isCloseTo(0.54723748542, within(1e-6));
        assertThat(minutes(outcome, "time")).isCloseTo(2.2096, within(5e-5));
        assertThat(minutes(outcome, "earliest")).isLessThan(minutes(outcome, "time"));
        assertThat(minutes(outcome, "latest")).isGreaterThan(minutes(outcome, "time"));
    }

    @Test
    void aRatioBeyondTheHighestIsANoteAndNoTime() {
        Outcome outcome = catalogue.run(rise, boxBod.with("wanted", Ratio.of(3.2)));
        assertThat(outcome.results()).containsOnlyKeys("highest");
        assertThat(notes(outcome)).anyMatch(note -> note.startsWith("This foam does not get to"));
    }

    @Test
    void tooFewReadingsAreANoteAndNoError() {
        Outcome outcome =
                catalogue.run(rise, usual.reading("readings", rows(new double[] {1, 2}, new double[] {2, 3})));
        assertThat(outcome.results()).isEmpty();
        assertThat(notes(outcome)).singleElement().asString().startsWith("Cannot tell yet. ");
        assertThat(rise.drawing(usual.reading("readings", List.of()), outcome, QuantityText.of(DecimalMark.POINT)))
                .isEmpty();
    }

    @Test
    void tooNearTheHighestThereIsNoLatestTime() {
        Outcome outcome = catalogue.run(rise, boxBod.with("wanted", Ratio.of(3.13)));
        assertThat(outcome.results()).containsOnlyKeys("highest", "time", "earliest");
        assertThat(notes(outcome)).anyMatch(note -> note.startsWith("There is no latest time"));
    }

    /** By hand: −ln(1 − 2.5 ÷ 3.1380940889) ÷ 0.54723748542 = 2.9106 min. */
    @Test
    void theOneLeftOutIsASlip() {
        Outcome outcome = catalogue.run(rise, boxBod);
        double wrong = -Math.log(1 - 2.5 / 3.1380940889) / 0.54723748542;
        assertThat(Slips.of(outcome, Slip.GAIN_FOR_RATIO, "time").in(Unit.MINUTE))
                .isCloseTo(wrong, within(1e-5));
    }

    @Test
    void theChartShowsEveryReading() {
        String svg = rise.drawing(boxBod, catalogue.run(rise, boxBod), QuantityText.of(DecimalMark.COMMA))
                .orElseThrow();
        assertThat(svg.split("<circle", -1)).hasSize(7);
        assertThat(svg).contains("is at 2,5 after: 2,2\u00a0min").doesNotContain("NaN", "Infinity", "style=");
    }

    private static List<Given.Row> rows(double[] minutes, double[] ratios) {
        return IntStream.range(0, minutes.length)
                .mapToObj(i -> Given.Row.of(TimeSpan.ofMinutes(minutes[i]), Ratio.of(ratios[i])))
                .toList();
    }

    private static List<String> notes(Outcome outcome) {
        return outcome.notes().stream().map(Outcome.Note::text).toList();
    }

    private static double minutes(Outcome outcome, String result) {
        return outcome.results().get(result).in(Unit.MINUTE);
    }
}
