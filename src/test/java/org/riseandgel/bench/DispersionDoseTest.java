package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.Concentration;

class DispersionDoseTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final DispersionDose dose = new DispersionDose();
    private final Given given = Given.defaultsOf(dose);
    private final Given asItComes = given.choosing("counted", "dispersion");

    @Test
    void aDryDoseInADispersionOfFortyPerCent() {
        Outcome outcome = catalogue.run(dose, given);
        // by hand: 150 × 0.044 = 6.6 g dry; ÷ 0.4 = 16.5 g; 60 % of that is water; 4.4 ÷ 0.4 = 11 php
        assertThat(value(outcome, "dryMass")).isCloseTo(6.6, within(1e-9));
        assertThat(value(outcome, "dispersionMass")).isCloseTo(16.5, within(1e-9));
        assertThat(value(outcome, "waterBrought")).isCloseTo(9.9, within(1e-9));
        assertThat(value(outcome, "dispersionPhp")).isCloseTo(11, within(1e-9));
        assertThat(value(outcome, "dryPhp")).isCloseTo(4.4, within(1e-9));
    }

    @Test
    void theSameCountedAsItComes() {
        Outcome outcome = catalogue.run(dose, asItComes);
        // by hand: 150 × 0.11 = 16.5 g; × 0.4 = 6.6 g dry; 60 % of 16.5 g is water; 11 × 0.4 = 4.4 php
        assertThat(value(outcome, "dispersionMass")).isCloseTo(16.5, within(1e-9));
        assertThat(value(outcome, "dryMass")).isCloseTo(6.6, within(1e-9));
        assertThat(value(outcome, "waterBrought")).isCloseTo(9.9, within(1e-9));
        assertThat(value(outcome, "dryPhp")).isCloseTo(4.4, within(1e-9));
        assertThat(value(outcome, "dispersionPhp")).isCloseTo(11, within(1e-9));
    }

    @Test
    void onlyTheDoseThatIsCountedIsUsed() {
        assertThat(dose.uses("dryDose", given)).isTrue();
        assertThat(dose.uses("dispersionDose", given)).isFalse();
        assertThat(dose.uses("dryDose", asItComes)).isFalse();
        assertThat(dose.uses("dispersionDose", asItComes)).isTrue();
    }

    @Test
    void slipsByHand() {
        Outcome outcome = catalogue.run(dose, given);
        // the dry mass weighed as dispersion; 6.6 × 0.4; 60 % of 6.6; 150 ÷ 0.044
        assertThat(wrong(outcome, Slip.DISPERSION_FOR_DRY, "dispersionMass")).isCloseTo(6.6, within(1e-9));
        assertThat(wrong(outcome, Slip.MULTIPLIED_FOR_DIVIDED, "dispersionMass"))
                .isCloseTo(2.64, within(1e-9));
        // 60 % taken for the solids: 6.6 ÷ 0.6; 4.4 ÷ 0.6; and the salt given for the water
        assertThat(wrong(outcome, Slip.WATER_FOR_SALT, "dispersionMass")).isCloseTo(11, within(1e-9));
        assertThat(wrong(outcome, Slip.WATER_FOR_SALT, "dispersionPhp")).isCloseTo(7.33333, within(1e-5));
        assertThat(wrong(outcome, Slip.WATER_FOR_SALT, "waterBrought")).isCloseTo(6.6, within(1e-9));
        assertThat(wrong(outcome, Slip.DISPERSION_FOR_DRY, "waterBrought")).isCloseTo(3.96, within(1e-9));
        assertThat(wrong(outcome, Slip.DIVIDED_FOR_MULTIPLIED, "dryMass")).isCloseTo(3409.091, within(1e-3));
        SlipsApart.check(dose, outcome);
    }

    @Test
    void slipsByHandWhenCountedAsItComes() {
        Outcome outcome = catalogue.run(dose, asItComes);
        // all of 16.5 g taken for salt; 16.5 ÷ 0.4; 11 php taken for dry; 150 ÷ 0.11
        assertThat(wrong(outcome, Slip.DISPERSION_FOR_DRY, "dryMass")).isCloseTo(16.5, within(1e-9));
        assertThat(wrong(outcome, Slip.DIVIDED_FOR_MULTIPLIED, "dryMass")).isCloseTo(41.25, within(1e-9));
        assertThat(wrong(outcome, Slip.DISPERSION_FOR_DRY, "dispersionMass")).isCloseTo(41.25, within(1e-9));
        assertThat(wrong(outcome, Slip.DISPERSION_FOR_DRY, "dryPhp")).isCloseTo(11, within(1e-9));
        // 60 % taken for the solids: 16.5 × 0.6; 11 × 0.6; and the other 40 % for the water
        assertThat(wrong(outcome, Slip.WATER_FOR_SALT, "dryMass")).isCloseTo(9.9, within(1e-9));
        assertThat(wrong(outcome, Slip.WATER_FOR_SALT, "dryPhp")).isCloseTo(6.6, within(1e-9));
        assertThat(wrong(outcome, Slip.WATER_FOR_SALT, "waterBrought")).isCloseTo(6.6, within(1e-9));
        assertThat(wrong(outcome, Slip.DIVIDED_FOR_MULTIPLIED, "dispersionMass"))
                .isCloseTo(1363.636, within(1e-3));
        SlipsApart.check(dose, outcome);
    }

    @Test
    void theCautionStandsBesideIt() {
        assertThat(dose.cautions()).singleElement().asString().contains("toxic").contains("cleared");
    }

    @Property
    void dryAndWaterMakeTheDispersion(@ForAll @Scale(3) @DoubleRange(min = 1, max = 99) double solids) {
        Outcome outcome = catalogue.run(dose, given.with("solids", Concentration.ofPercent(solids)));
        assertThat(value(outcome, "dryMass") + value(outcome, "waterBrought"))
                .isCloseTo(value(outcome, "dispersionMass"), Percentage.withPercentage(1e-9));
    }

    private static double value(Outcome outcome, String name) {
        return outcome.results().get(name).inBase();
    }

    private static double wrong(Outcome outcome, Slip slip, String result) {
        return Slips.of(outcome, slip, result).inBase();
    }
}
