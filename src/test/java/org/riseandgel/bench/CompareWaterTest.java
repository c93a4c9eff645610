package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;

class CompareWaterTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final CompareWater compare = new CompareWater();
    private final Given given = Given.defaultsOf(compare)
            .with("first", Mass.ofGrams(500))
            .with("now", Mass.ofGrams(380))
            .with("dry", Mass.ofGrams(240))
            .with("tray", Mass.ofGrams(100));

    /** By hand: 500 − 100 − 240 = 160 g, 380 − 100 − 240 = 40 g, a quarter. */
    @Test
    void aQuarterIsLeft() {
        Outcome outcome = catalogue.run(compare, given);
        assertThat(value(outcome, "waterAtFirst")).isCloseTo(160, within(1e-9));
        assertThat(value(outcome, "waterNow")).isCloseTo(40, within(1e-9));
        assertThat(value(outcome, "shareLeft")).isCloseTo(25, within(1e-9));
    }

    /** 500 − 240 and 380 − 240 with the tray; 140 ÷ 260; 100 % − 25 %; 160 − 40; 40 ÷ 280; 280 ÷ 400. */
    @Test
    void slipsByHand() {
        Outcome outcome = catalogue.run(compare, given);
        assertThat(wrong(outcome, Slip.TARE_LEFT_IN, "waterAtFirst")).isCloseTo(260, within(1e-9));
        assertThat(wrong(outcome, Slip.TARE_LEFT_IN, "waterNow")).isCloseTo(140, within(1e-9));
        assertThat(wrong(outcome, Slip.TARE_LEFT_IN, "shareLeft")).isCloseTo(53.84615, within(1e-5));
        assertThat(wrong(outcome, Slip.DRY_FOR_LEFT, "shareLeft")).isCloseTo(75, within(1e-9));
        assertThat(wrong(outcome, Slip.DRY_FOR_LEFT, "waterAtFirst")).isCloseTo(120, within(1e-9));
        assertThat(wrong(outcome, Slip.DRY_FOR_LEFT, "waterNow")).isCloseTo(120, within(1e-9));
        assertThat(wrong(outcome, Slip.WRONG_WHOLE, "shareLeft")).isCloseTo(14.28571, within(1e-5));
        assertThat(wrong(outcome, Slip.DRY_LEFT_IN, "shareLeft")).isCloseTo(70, within(1e-9));
        SlipsApart.check(compare, outcome);
    }

    @Test
    void massesThatCannotBeAreRefusedAtTheirField() {
        assertThat(refusedAt(given.with("tray", Mass.ofGrams(380)))).isEqualTo("tray");
        assertThat(refusedAt(given.with("first", Mass.ofGrams(339)))).isEqualTo("first");
        assertThat(refusedAt(given.with("now", Mass.ofGrams(501)))).isEqualTo("now");
        assertThat(refusedAt(given.with("now", Mass.ofGrams(339)))).isEqualTo("now");
    }

    private String refusedAt(Given wrong) {
        String[] at = new String[1];
        assertThatThrownBy(() -> catalogue.run(compare, wrong))
                .isInstanceOf(OutOfRangeException.class)
                .satisfies(refused -> at[0] = compare.inputAt(((OutOfRangeException) refused).what()));
        return at[0];
    }

    private static double value(Outcome outcome, String name) {
        return outcome.results().get(name).inBase();
    }

    private static double wrong(Outcome outcome, Slip slip, String result) {
        return Slips.of(outcome, slip, result).inBase();
    }
}
