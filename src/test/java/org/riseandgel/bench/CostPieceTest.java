package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Money;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Ratio;

class CostPieceTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final CostPiece cost = new CostPiece();
    private final Given given = Given.defaultsOf(cost);

    @Test
    void goodPiecesPayForTheScrap() {
        Outcome outcome = catalogue.run(cost, given);
        // docs/formulas/yield.md: 12 ÷ 0.8 = 15; by hand 40 ÷ 0.8 = 50 pieces for 600
        assertThat(value(outcome, "costPerGoodPiece")).isCloseTo(15, within(1e-9));
        assertThat(value(outcome, "piecesToMake")).isEqualTo(50);
        assertThat(value(outcome, "wholeCost")).isCloseTo(600, within(1e-9));
        // 12 × 1.2; 12 × 0.8; 40 × 1.2 for 576; 40 × 0.8
        assertThat(wrong(outcome, Slip.WRONG_WHOLE, "costPerGoodPiece")).isCloseTo(14.4, within(1e-9));
        assertThat(wrong(outcome, Slip.MULTIPLIED_FOR_DIVIDED, "costPerGoodPiece"))
                .isCloseTo(9.6, within(1e-9));
        assertThat(wrong(outcome, Slip.WRONG_WHOLE, "piecesToMake")).isEqualTo(48);
        assertThat(wrong(outcome, Slip.WRONG_WHOLE, "wholeCost")).isCloseTo(576, within(1e-9));
        assertThat(wrong(outcome, Slip.MULTIPLIED_FOR_DIVIDED, "piecesToMake")).isEqualTo(32);
        // by the scrap: 12 ÷ 0.2, 40 ÷ 0.2 for 2400; scrap forgotten: 12, 40, 480
        assertThat(wrong(outcome, Slip.LOST_FOR_LEFT, "costPerGoodPiece")).isCloseTo(60, within(1e-9));
        assertThat(wrong(outcome, Slip.LOST_FOR_LEFT, "piecesToMake")).isEqualTo(200);
        assertThat(wrong(outcome, Slip.LOST_FOR_LEFT, "wholeCost")).isCloseTo(2400, within(1e-9));
        assertThat(wrong(outcome, Slip.SCRAP_LEFT_OUT, "costPerGoodPiece")).isCloseTo(12, within(1e-9));
        assertThat(wrong(outcome, Slip.SCRAP_LEFT_OUT, "piecesToMake")).isEqualTo(40);
        assertThat(wrong(outcome, Slip.SCRAP_LEFT_OUT, "wholeCost")).isCloseTo(480, within(1e-9));
        SlipsApart.check(cost, outcome);
    }

    @Test
    void moneyIsAPlainNumber() {
        GivenReading reading = GivenReader.of(DecimalMark.COMMA).read(cost, Map.of("costPerPiece", "7,50"));
        assertThat(reading.given().orElseThrow().get("costPerPiece", Money.class))
                .isEqualTo(Money.of(7.5));
        assertThat(QuantityText.of(DecimalMark.COMMA)
                        .toReadability(Money.of(7.5), org.riseandgel.core.quantity.Unit.MONEY, 0.01))
                .isEqualTo("7,50");
        assertThat(GivenReader.of(DecimalMark.POINT)
                        .read(cost, Map.of("costPerPiece", "7.50 g"))
                        .problems())
                .singleElement()
                .extracting(FieldProblem::message)
                .asString()
                .contains("amount of money")
                .contains("a plain number");
    }

    @Test
    void halfAPieceIsRefused() {
        assertThatThrownBy(() -> catalogue.run(cost, given.with("goodPieces", Ratio.of(1.5))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("Good pieces are 1.5, must be a whole number");
    }

    @Property
    void enoughIsMadeAndNotOneTooMany(
            @ForAll @IntRange(min = 1, max = 10_000) int good, @ForAll @IntRange(min = 0, max = 95) int scrap) {
        double made = value(
                catalogue.run(
                        cost,
                        given.with("goodPieces", Ratio.of(good)).with("scrapRate", Concentration.ofPercent(scrap))),
                "piecesToMake");
        // in whole hundredths, so that nothing is rounded
        assertThat((long) made * (100 - scrap)).isGreaterThanOrEqualTo(100L * good);
        assertThat(((long) made - 1) * (100 - scrap)).isLessThan(100L * good);
    }

    private static double value(Outcome outcome, String name) {
        return outcome.results().get(name).inBase();
    }

    private static double wrong(Outcome outcome, Slip slip, String result) {
        return Slips.of(outcome, slip, result).inBase();
    }
}
