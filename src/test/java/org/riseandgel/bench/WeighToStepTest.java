package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Php;

class WeighToStepTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final WeighToStep step = new WeighToStep();
    private final Given given = Given.defaultsOf(step);

    @Test
    void fourGramsOfWaterOnAKitchenScale() {
        Outcome outcome = catalogue.run(
                step,
                given.with("base", Mass.ofGrams(120))
                        .with("ingredientPhp", Php.ofPartsPerHundred(3.5))
                        .with("readability", Mass.ofGrams(1)));
        // by hand: 120 × 0.035 = 4.2 g, shown as 4 g, which is 400 ÷ 120 = 3.3333 php
        assertThat(value(outcome, "exactMass")).isCloseTo(4.2, within(1e-9));
        assertThat(value(outcome, "massToWeigh")).isCloseTo(4, within(1e-9));
        assertThat(value(outcome, "realPhp")).isCloseTo(3.3333, within(5e-5));
        // JCGM 100:2008, 4.3.7: 1 ÷ √12 for each of two readings, together 1 ÷ √6 = 0.408248 g; ÷ 4 g; ÷ 0.01
        assertThat(value(outcome, "uncertainty")).isCloseTo(0.408248, within(5e-7));
        assertThat(value(outcome, "share")).isCloseTo(10.2062, within(5e-5));
        assertThat(value(outcome, "leastMass")).isCloseTo(40.8248, within(5e-5));
    }

    @Test
    void slipsByHand() {
        Outcome outcome = catalogue.run(step, given);
        // 0.1 ÷ √12; 0.1 ÷ 2; 0.040825 of 150 g; 0.1 ÷ 2 ÷ 1 %; 0.040825 × 1 %
        assertThat(wrong(outcome, Slip.ONE_READING, "uncertainty")).isCloseTo(0.0288675, within(5e-8));
        assertThat(wrong(outcome, Slip.HALF_STEP, "uncertainty")).isCloseTo(0.05, within(1e-12));
        assertThat(wrong(outcome, Slip.WRONG_WHOLE, "share")).isCloseTo(0.0272166, within(5e-8));
        assertThat(wrong(outcome, Slip.HALF_STEP, "leastMass")).isCloseTo(5, within(1e-9));
        assertThat(wrong(outcome, Slip.MULTIPLIED_FOR_DIVIDED, "leastMass")).isCloseTo(0.00040825, within(5e-9));
    }

    @Test
    void whatTheDisplayCannotShowIsASlip() {
        Given coarse = given.with("ingredientPhp", Php.ofPartsPerHundred(3.8)).with("readability", Mass.ofGrams(1));
        Outcome outcome = catalogue.run(step, coarse);
        // 150 × 0.038 = 5.7 g, to weigh 6 g; cut off it would be 5 g, which is 500 ÷ 150 php
        assertThat(value(outcome, "massToWeigh")).isCloseTo(6, within(1e-9));
        assertThat(wrong(outcome, Slip.NOT_ROUNDED, "massToWeigh")).isCloseTo(5.7, within(1e-9));
        assertThat(wrong(outcome, Slip.CUT_OFF, "massToWeigh")).isCloseTo(5, within(1e-9));
        assertThat(wrong(outcome, Slip.CUT_OFF, "realPhp")).isCloseTo(3.3333, within(5e-5));
        SlipsApart.check(step, outcome);
    }

    @Test
    void aStepTooCoarseForTheIngredientIsRefusedAtTheBalance() {
        assertThatThrownBy(() -> catalogue
                        .run(step, given.with("readability", Mass.ofGrams(10)))
                        .results())
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("too coarse");
        assertThat(step.inputAt("readability")).isEqualTo("readability");
    }

    @Property
    void theLeastMassIsUncertainByTheShareThatIsAllowed(
            @ForAll @Scale(3) @DoubleRange(min = 0.001, max = 1) double readability) {
        Outcome first = catalogue.run(step, given.with("readability", Mass.ofGrams(readability)));
        double least = value(first, "leastMass");
        assertThat(100 * value(first, "uncertainty") / least).isCloseTo(1, within(1e-9));
    }

    private static double value(Outcome outcome, String name) {
        return outcome.results().get(name).inBase();
    }

    private static double wrong(Outcome outcome, Slip slip, String result) {
        return Slips.of(outcome, slip, result).inBase();
    }
}
