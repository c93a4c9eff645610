package org.riseandgel.core.yield;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.OutOfRangeException;

class YieldTest {
    // By hand: 200 mm shrinks by 4 % to 192 mm; of the piece that is 8 ÷ 192 = 4.1666… %.
    @Test
    void shrinkageByHand() {
        Shrinkage shrinkage = Shrinkage.measured(Length.ofMillimetres(200), Length.ofMillimetres(192));
        assertThat(shrinkage.ofSculpt().inPercent()).isCloseTo(4, within(1e-12));
        assertThat(shrinkage.asShareOfPiece()).isCloseTo(100 * 8 / 192.0, within(1e-12));
        assertThat(shrinkage.sculptFor(Length.ofMillimetres(192)).inMillimetres())
                .isCloseTo(200, within(1e-9));
        assertThat(shrinkage.volumeLeft()).isCloseTo(0.96 * 0.96 * 0.96, within(1e-12));
    }

    @Property(tries = 200)
    void bothWaysAreInverse(
            @ForAll @DoubleRange(min = 0, max = 90) double percent,
            @ForAll @DoubleRange(min = 1, max = 1000) double millimetres) {
        Shrinkage shrinkage = new Shrinkage(Concentration.ofPercent(percent));
        Length sculpt = Length.ofMillimetres(millimetres);
        assertThat(shrinkage.sculptFor(shrinkage.pieceFrom(sculpt)).inMillimetres())
                .isCloseTo(millimetres, within(1e-9));
        assertThat(shrinkage.pieceFrom(sculpt).inMillimetres()).isLessThanOrEqualTo(millimetres);
        assertThat(Shrinkage.ofPiece(Math.min(900, shrinkage.asShareOfPiece()))
                        .ofSculpt()
                        .inPercent())
                .isCloseTo(percent, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {90.1, 100, -1, Double.NaN})
    void noShrinkageOutOfRange(double percent) {
        assertThatThrownBy(() -> new Shrinkage(Concentration.ofPercent(percent)))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void noPieceGrows() {
        assertThatThrownBy(() -> Shrinkage.measured(Length.ofMillimetres(100), Length.ofMillimetres(101)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("piece in millimetres is 101.0, must be from 0.0 to 100.0");
        assertThatThrownBy(() -> Shrinkage.ofPiece(901)).isInstanceOf(OutOfRangeException.class);
    }

    // By hand: 12 ÷ 0.8 = 15; for 8 good ones at 20 % scrap 10 are made.
    @Test
    void costByHand() {
        Concentration fifth = Concentration.ofPercent(20);
        assertThat(PieceCost.ofGood(12, fifth)).isCloseTo(15, within(1e-12));
        assertThat(PieceCost.toMake(8, fifth)).isEqualTo(10);
        assertThat(PieceCost.toMake(9, fifth)).isEqualTo(12);
        assertThat(PieceCost.toMake(21, Concentration.ofPercent(30))).isEqualTo(30);
        assertThat(PieceCost.ofGood(12, Concentration.ofPercent(0))).isEqualTo(12);
    }

    @Property(tries = 200)
    void enoughAreMadeAndNoneTooMany(
            @ForAll @IntRange(max = 1000) int good, @ForAll @DoubleRange(min = 0, max = 99) double scrap) {
        Concentration rate = Concentration.ofPercent(scrap);
        long made = PieceCost.toMake(good, rate);
        double share = 1 - rate.asFraction();
        assertThat(made * share).isGreaterThanOrEqualTo(good - 1e-9);
        assertThat((made - 1) * share).isLessThan(good + 1e-9);
    }

    // Wilson's 95 % interval for 1 of 29: Newcombe 1998, recomputed; here in percent.
    @Test
    void fewPiecesTellLittle() {
        assertThat(PieceCost.scrapPercent(1, 29, 0.95).low()).isCloseTo(0.6113, within(1e-4));
        assertThat(PieceCost.scrapPercent(1, 29, 0.95).high()).isCloseTo(17.1755, within(1e-4));
    }

    @Test
    void impossibleCostsAreRefused() {
        Concentration all = Concentration.ofPercent(100);
        assertThatThrownBy(() -> PieceCost.ofGood(12, all)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> PieceCost.ofGood(Double.NaN, Concentration.ofPercent(0)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> PieceCost.ofGood(-1, Concentration.ofPercent(0)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> PieceCost.toMake(-1, Concentration.ofPercent(0)))
                .isInstanceOf(OutOfRangeException.class);
    }
}
