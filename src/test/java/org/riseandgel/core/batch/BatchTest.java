package org.riseandgel.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;

class BatchTest {
    private static final Formula USUAL = Formula.usual();

    /** Base 150 g to foaming agent 15 g to water 5 g and gelling agent 15 to 18 g: common practice, no source. */
    @Test
    void theUsualBatch() {
        Batch batch = Batch.ofBase(USUAL, Mass.ofGrams(150));
        assertThat(grams(batch, "Foaming agent")).isCloseTo(15, within(1e-9));
        assertThat(grams(batch, "Water")).isCloseTo(5, within(1e-9));
        assertThat(grams(batch, "Gelling agent")).isCloseTo(16.5, within(1e-9)).isBetween(15.0, 18.0);
        assertThat(batch.total().inGrams()).isCloseTo(186.5, within(1e-9));
    }

    private static double grams(Batch batch, String ingredient) {
        return batch.massOf(batch.formula().row(ingredient)).inGrams();
    }

    @Property
    void theTotalTargetIsMet(@ForAll @Scale(9) @DoubleRange(min = 1, max = 50_000) double total) {
        Batch batch = Batch.ofTotal(USUAL, Mass.ofGrams(total));
        assertThat(batch.total().inGrams()).isCloseTo(total, Percentage.withPercentage(1e-10));
        assertThat(batch.portions().stream()
                        .mapToDouble(portion -> portion.mass().inGrams())
                        .sum())
                .isCloseTo(total, Percentage.withPercentage(1e-10));
    }

    @Property
    void theFoamTargetIsMet(
            @ForAll @Scale(9) @DoubleRange(min = 10, max = 50_000) double foam,
            @ForAll @Scale(9) @DoubleRange(min = 1, max = 12) double ratio,
            @ForAll @Scale(9) @DoubleRange(min = 0.8, max = 1.3) double density) {
        Batch batch =
                Batch.ofFoam(USUAL, Volume.ofMillilitres(foam), Ratio.of(ratio), Density.ofGramsPerMillilitre(density));
        assertThat(batch.foam(Density.ofGramsPerMillilitre(density), Ratio.of(ratio))
                        .inMillilitres())
                .isCloseTo(foam, Percentage.withPercentage(1e-10));
    }

    @Property
    void everyMassGrowsWithTheBase(
            @ForAll @Scale(9) @DoubleRange(min = 1, max = 10_000) double base,
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 10) double k) {
        Batch one = Batch.ofBase(USUAL, Mass.ofGrams(base));
        Batch other = Batch.ofBase(USUAL, Mass.ofGrams(base * k));
        for (int i = 0; i < one.portions().size(); i++) {
            assertThat(other.portions().get(i).mass().inGrams())
                    .isCloseTo(one.portions().get(i).mass().inGrams() * k, Percentage.withPercentage(1e-10));
        }
    }

    @Test
    void aBalanceOfWholeGramsShiftsTheDose() {
        WeighingPlan plan = Batch.ofBase(USUAL, Mass.ofGrams(40)).weighing(Mass.ofGrams(1), true);
        WeighingPlan.Weighing gelling = plan.rows().get(3);
        // by hand: 40 g × 11 ÷ 100 = 4.4 g, which a balance of 1 g takes for 4 g; 4 ÷ 40 is 10 php, just in range
        assertThat(gelling.exact().inGrams()).isCloseTo(4.4, within(1e-12));
        assertThat(gelling.toWeigh().inGrams()).isEqualTo(4);
        assertThat(gelling.real().inPartsPerHundred()).isCloseTo(10, within(1e-12));
        assertThat(gelling.inRange()).isTrue();
        // and 30 g × 11 ÷ 100 = 3.3 g → 3 g, 10 php; 31 g: 3.41 → 3 g, 9.68 php, too little
        WeighingPlan.Weighing tooLittle = Batch.ofBase(USUAL, Mass.ofGrams(31))
                .weighing(Mass.ofGrams(1), true)
                .rows()
                .get(3);
        assertThat(tooLittle.real().inPartsPerHundred()).isCloseTo(300.0 / 31, within(1e-12));
        assertThat(tooLittle.inRange()).isFalse();
    }

    /** JCGM 100:2008, 4.3.7: a reading within ±d/2 has u = d ÷ (2√3); reading and tare together have √2 times that. */
    @Test
    void uncertaintyFromTheDisplay() {
        assertThat(WeighingPlan.readingUncertainty(Mass.ofGrams(0.1), false).inGrams())
                .isCloseTo(0.0288675, within(5e-8));
        assertThat(WeighingPlan.readingUncertainty(Mass.ofGrams(0.1), true).inGrams())
                .isCloseTo(0.0408248, within(5e-8));
        WeighingPlan.Weighing gelling = Batch.ofBase(USUAL, Mass.ofGrams(150))
                .weighing(Mass.ofGrams(0.1), true)
                .rows()
                .get(3);
        // by hand: 100 ÷ 150 × 0.0408248 × √(1 + 0.11²)
        assertThat(gelling.phpUncertainty().inPartsPerHundred()).isCloseTo(0.0273808, within(5e-7));
        assertThat(gelling.massUncertainty().inGrams()).isCloseTo(0.0408248, within(5e-8));
    }

    @Test
    void halvesAreRoundedUpWhateverTheComputerMakesOfThem() {
        // 1.005 is a little less than 1.005 in a computer; a balance of 0.01 g shows 1.01
        assertThat(WeighingPlan.rounded(Mass.ofGrams(1.005), Mass.ofGrams(0.01)).inGrams())
                .isEqualTo(1.01);
        assertThat(WeighingPlan.rounded(Mass.ofGrams(0.15 * 3), Mass.ofGrams(0.1))
                        .inGrams())
                .isEqualTo(0.5);
    }

    @Test
    void aBalanceTooCoarseForTheBaseIsRefused() {
        assertThatThrownBy(() -> Batch.ofBase(USUAL, Mass.ofGrams(0.4)).weighing(Mass.ofGrams(1), true))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("readability is 1.0 g, too coarse for 0.4 g of base");
    }

    @Test
    void aFormulaHasOneBaseOfAHundredAndEveryNameOnce() {
        Formula.Row base = Formula.Row.base("Base");
        Formula.Row soap = Formula.Row.free("Soap", Php.ofPartsPerHundred(10));
        assertThatThrownBy(() -> new Formula(List.of(soap))).hasMessage("formula has 0 base rows, must have exactly 1");
        assertThatThrownBy(() -> new Formula(List.of(base, Formula.Row.base("Other"))))
                .hasMessageContaining("2 base rows");
        assertThatThrownBy(() -> new Formula(List.of(base.at(Php.ofPartsPerHundred(90)))))
                .hasMessage("base is 90.0 php, must be 100 php");
        assertThatThrownBy(() -> new Formula(List.of(base, soap, soap))).hasMessageContaining("names Soap twice");
        assertThatThrownBy(() -> Formula.Row.free("Soap", Php.ofPartsPerHundred(1001)))
                .hasMessage("php of Soap is 1001.0, must be from 0.0 to 1000.0");
        assertThatThrownBy(() -> Formula.Row.free(" ", Php.ofPartsPerHundred(1)))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void aBatchOfNothingIsRefused() {
        assertThatThrownBy(() -> Batch.ofBase(USUAL, Mass.ofGrams(0))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Batch.baseIn(Mass.ofGrams(10), Php.ofPartsPerHundred(99)))
                .hasMessageContaining("sum of php is 99.0, must be from 100.0");
    }
}
