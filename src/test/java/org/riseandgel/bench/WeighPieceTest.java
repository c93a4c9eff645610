package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Unit;

class WeighPieceTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final WeighPiece weighing = new WeighPiece();

    /** By hand: 400, 300, 250 g halve their water of 200 g every 2 h, so an eighth is left after 6 h, 2 h after the last. */
    private final Given halving = Given.defaultsOf(weighing)
            .reading("weighings", rows(new double[] {0, 2, 4}, new double[] {400, 300, 250}))
            .with("waterLeft", Concentration.ofPercent(12.5));

    @Test
    void aPieceThatHalvesItsWaterEveryTwoHours() {
        Outcome outcome = catalogue.run(weighing, halving);
        assertThat(outcome.results().get("dryMass").in(Unit.GRAM)).isCloseTo(200, within(1e-6));
        assertThat(outcome.step("time").orElseThrow().value().in(Unit.HOUR)).isCloseTo(6, within(1e-8));
        assertThat(hours(outcome, "timeLeft")).isCloseTo(2, within(1e-8));
        assertThat(hours(outcome, "earliest")).isLessThan(2);
        assertThat(hours(outcome, "latest")).isGreaterThan(2);
    }

    /** The same weighings with a clock that was an hour on: what is left does not change. */
    @Test
    void onlyTheTimeBetweenWeighingsCounts() {
        Given later = halving.reading("weighings", rows(new double[] {1, 3, 5}, new double[] {400, 300, 250}));
        assertThat(hours(catalogue.run(weighing, later), "timeLeft")).isCloseTo(2, within(1e-8));
    }

    /** By hand: 6 h from the first weighing without taking off the 4 h; −ln(0.875) ÷ (ln 2 ÷ 2 h) is 0.385 h, so 0 left. */
    @Test
    void slipsByHand() {
        Outcome outcome = catalogue.run(weighing, halving);
        assertThat(Slips.of(outcome, Slip.START_FOR_END, "timeLeft").in(Unit.HOUR))
                .isCloseTo(6, within(1e-8));
        assertThat(Slips.of(outcome, Slip.DRY_FOR_LEFT, "timeLeft").in(Unit.HOUR))
                .isZero();
    }

    @Test
    void aPieceThatIsDryEnoughHasNoTimeLeft() {
        Outcome outcome = catalogue.run(weighing, halving.with("waterLeft", Concentration.ofPercent(50)));
        assertThat(hours(outcome, "timeLeft")).isZero();
        assertThat(outcome.notes())
                .extracting(Outcome.Note::text)
                .anyMatch(note -> note.contains("as dry as you want"));
    }

    @Test
    void evenLossTellsNothingYet() {
        Given even = halving.reading("weighings", rows(new double[] {0, 1, 2, 3}, new double[] {400, 380, 360, 340}));
        Outcome outcome = catalogue.run(weighing, even);
        assertThat(outcome.results()).isEmpty();
        assertThat(outcome.notes())
                .extracting(Outcome.Note::text)
                .singleElement()
                .asString()
                .startsWith("Cannot tell yet. ");
        assertThat(weighing.drawing(even, outcome, QuantityText.of(DecimalMark.POINT)))
                .isEmpty();
    }

    @Test
    void theChartShowsEveryWeighing() {
        String svg = weighing.drawing(halving, catalogue.run(weighing, halving), QuantityText.of(DecimalMark.POINT))
                .orElseThrow();
        assertThat(svg.split("<circle", -1)).hasSize(4);
        assertThat(svg)
                .contains("The piece tends to 200\u00a0g and has still to dry for 2.0\u00a0h.")
                .doesNotContain("NaN", "style=");
    }

    private static List<Given.Row> rows(double[] hours, double[] grams) {
        return IntStream.range(0, hours.length)
                .mapToObj(i -> Given.Row.of(TimeSpan.ofHours(hours[i]), Mass.ofGrams(grams[i])))
                .toList();
    }

    private static double hours(Outcome outcome, String result) {
        return outcome.results().get(result).in(Unit.HOUR);
    }
}
