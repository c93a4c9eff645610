package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;

class BatchForMoldTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final BatchForMold batch = new BatchForMold();
    /** 100 + 10 + 4 + 11 = 125 php, so that numbers come out round. */
    private final Given molds = Given.defaultsOf(batch)
            .with("cavity", Volume.ofMillilitres(300))
            .with("pieces", Ratio.of(3))
            .with("waterPhp", Php.ofPartsPerHundred(4));

    @Test
    void threeMolds() {
        Outcome outcome = catalogue.run(batch, molds);
        // docs/formulas/mold.md, by hand: 300 × 1.2 × 3 ÷ 0.9 = 1200 mL; ÷ 4 = 300 mL, × 1.02 = 306 g, ÷ 1.25 = 244.8 g
        assertThat(value(outcome, "intoMolds")).isCloseTo(1080, within(1e-9));
        assertThat(value(outcome, "foamNeeded")).isCloseTo(1200, within(1e-9));
        assertThat(value(outcome, "liquidVolume")).isCloseTo(300, within(1e-9));
        assertThat(value(outcome, "totalMass")).isCloseTo(306, within(1e-9));
        assertThat(value(outcome, "baseMass")).isCloseTo(244.8, within(1e-9));
        assertThat(value(outcome, "foamingAgentMass")).isCloseTo(24.48, within(1e-9));
        assertThat(value(outcome, "waterMass")).isCloseTo(9.792, within(1e-9));
        assertThat(value(outcome, "gellingAgentMass")).isCloseTo(26.928, within(1e-9));
    }

    @Test
    void slipsByHand() {
        Outcome outcome = catalogue.run(batch, molds);
        // 1200 ÷ 1.2; 1200 × 0.9; 1080 × 0.9; and what of it reaches the base
        assertThat(wrong(outcome, Slip.OVERFILL_LEFT_OUT, "foamNeeded")).isCloseTo(1000, within(1e-9));
        assertThat(wrong(outcome, Slip.BOWL_LOSS_LEFT_OUT, "foamNeeded")).isCloseTo(1080, within(1e-9));
        assertThat(wrong(outcome, Slip.MULTIPLIED_FOR_DIVIDED, "foamNeeded")).isCloseTo(972, within(1e-9));
        assertThat(wrong(outcome, Slip.OVERFILL_LEFT_OUT, "baseMass")).isCloseTo(204, within(1e-9));
        assertThat(wrong(outcome, Slip.BOWL_LOSS_LEFT_OUT, "gellingAgentMass")).isCloseTo(24.2352, within(1e-9));
        assertThat(wrong(outcome, Slip.GAIN_FOR_RATIO, "liquidVolume")).isCloseTo(240, within(1e-9));
    }

    @Test
    void slipsAreApart() {
        SlipsApart.check(batch, catalogue.run(batch, Given.defaultsOf(batch)));
        SlipsApart.check(batch, catalogue.run(batch, molds));
    }

    @Test
    void halfAPieceIsRefused() {
        assertThatThrownBy(() -> catalogue.run(batch, molds.with("pieces", Ratio.of(2.5))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("Pieces are 2.5, must be a whole number")
                .extracting(refused -> batch.inputAt(((OutOfRangeException) refused).what()))
                .isEqualTo("pieces");
    }

    @Test
    void theGellingAgentHasItsCaution() {
        assertThat(batch.cautions())
                .singleElement()
                .asString()
                .contains("toxic")
                .contains("cleared");
    }

    /** Overfill and loss of nothing leave the cavity alone, and n molds take n times as much. */
    @Property
    void everythingGrowsWithThePieces(
            @ForAll @IntRange(min = 1, max = 50) int n,
            @ForAll @Scale(3) @DoubleRange(min = 10, max = 1000) double cavity) {
        Given plain = molds.with("cavity", Volume.ofMillilitres(cavity))
                .with("overfill", Concentration.ofPercent(0))
                .with("bowlLoss", Concentration.ofPercent(0))
                .with("pieces", Ratio.of(n));
        assertThat(value(catalogue.run(batch, plain), "foamNeeded"))
                .isCloseTo(n * cavity, Percentage.withPercentage(1e-9));
    }

    private static double value(Outcome outcome, String name) {
        return outcome.value(name).orElseThrow().inBase();
    }

    private static double wrong(Outcome outcome, Slip slip, String result) {
        return Slips.of(outcome, slip, result).inBase();
    }
}
