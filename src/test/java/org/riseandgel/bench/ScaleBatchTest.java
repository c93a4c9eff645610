package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Volume;

class ScaleBatchTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final ScaleBatch scale = new ScaleBatch();
    /** 100 + 10 + 4 + 11 = 125 php, so that numbers come out round. */
    private final Given round = Given.defaultsOf(scale).with("waterPhp", Php.ofPartsPerHundred(4));

    @Test
    void fromTheWholeBatch() {
        Outcome outcome = catalogue.run(scale, round.choosing("target", "total").with("total", Mass.ofGrams(500)));
        // by hand: 500 ÷ 1.25 = 400 g of base; 10, 4 and 11 % of that
        assertThat(grams(outcome, "baseMass")).isCloseTo(400, within(1e-9));
        assertThat(grams(outcome, "foamingAgentMass")).isCloseTo(40, within(1e-9));
        assertThat(grams(outcome, "waterMass")).isCloseTo(16, within(1e-9));
        assertThat(grams(outcome, "gellingAgentMass")).isCloseTo(44, within(1e-9));
        assertThat(grams(outcome, "totalMass")).isEqualTo(500);
        assertThat(outcome.results().get("liquidVolume").inBase()).isCloseTo(500 / 1.02, within(1e-9));
        // and the slips: php of the whole batch; the whole batch as base; times for divided
        assertThat(Slips.of(outcome, Slip.PERCENT_FOR_PHP, "gellingAgentMass").inBase())
                .isCloseTo(55, within(1e-9));
        assertThat(Slips.of(outcome, Slip.PERCENT_FOR_PHP, "baseMass").inBase()).isCloseTo(375, within(1e-9));
        assertThat(Slips.of(outcome, Slip.BASE_FOR_TOTAL, "baseMass").inBase()).isCloseTo(500, within(1e-9));
        assertThat(Slips.of(outcome, Slip.MULTIPLIED_FOR_DIVIDED, "baseMass").inBase())
                .isCloseTo(625, within(1e-9));
    }

    @Test
    void fromTheFoam() {
        Outcome outcome =
                catalogue.run(scale, round.choosing("target", "foam").with("foam", Volume.ofMillilitres(1000)));
        // by hand: 1000 mL ÷ 4 = 250 mL, × 1.02 = 255 g, ÷ 1.25 = 204 g of base
        assertThat(outcome.results().get("liquidVolume").inBase()).isCloseTo(250, within(1e-9));
        assertThat(grams(outcome, "totalMass")).isCloseTo(255, within(1e-9));
        assertThat(grams(outcome, "baseMass")).isCloseTo(204, within(1e-9));
        assertThat(Slips.of(outcome, Slip.GAIN_FOR_RATIO, "liquidVolume").inBase())
                .isCloseTo(200, within(1e-9));
        assertThat(Slips.of(outcome, Slip.MASS_FOR_VOLUME, "liquidVolume").inBase())
                .isCloseTo(255, within(1e-9));
        assertThat(Slips.of(outcome, Slip.DENSITY_LEFT_OUT, "baseMass").inBase())
                .isCloseTo(200, within(1e-9));
    }

    @Test
    void fromTheLiquid() {
        Outcome outcome =
                catalogue.run(scale, round.choosing("target", "liquid").with("liquid", Volume.ofMillilitres(500)));
        // by hand: 500 mL × 1.02 = 510 g, ÷ 1.25 = 408 g of base; without the density 500 ÷ 1.25
        assertThat(outcome.results().get("liquidVolume").inBase()).isCloseTo(500, within(1e-9));
        assertThat(grams(outcome, "totalMass")).isCloseTo(510, within(1e-9));
        assertThat(grams(outcome, "baseMass")).isCloseTo(408, within(1e-9));
        assertThat(grams(outcome, "gellingAgentMass")).isCloseTo(44.88, within(1e-9));
        assertThat(Slips.of(outcome, Slip.DENSITY_LEFT_OUT, "baseMass").inBase())
                .isCloseTo(400, within(1e-9));
        SlipsApart.check(scale, outcome);
    }

    @Test
    void fromTheBase() {
        Outcome outcome = catalogue.run(scale, round.with("base", Mass.ofGrams(150)));
        // by hand: 11 % of 150 g; 150 × 1.25; percent of the whole would make 25 % of a batch with 75 % of base
        assertThat(grams(outcome, "gellingAgentMass")).isCloseTo(16.5, within(1e-9));
        assertThat(grams(outcome, "totalMass")).isCloseTo(187.5, within(1e-9));
        assertThat(Slips.of(outcome, Slip.PERCENT_FOR_PHP, "gellingAgentMass").inBase())
                .isCloseTo(22, within(1e-9));
        assertThat(Slips.of(outcome, Slip.DIVIDED_FOR_MULTIPLIED, "gellingAgentMass")
                        .inBase())
                .isCloseTo(150 / 0.11, within(1e-6));
    }

    @Test
    void aCoarseBalanceThatSpoilsTheDoseIsToldOf() {
        Given coarse = round.with("base", Mass.ofGrams(31)).with("readability", Mass.ofGrams(1));
        Outcome outcome = catalogue.run(scale, coarse);
        assertThat(outcome.notes())
                .extracting(Outcome.Note::text)
                .anyMatch(note -> note.startsWith("Gelling agent as"));
        assertThat(outcome.tables().get(0).rows().get(3).get(4).words()).isEqualTo("no");
        assertThat(catalogue.run(scale, round).notes())
                .extracting(Outcome.Note::text)
                .noneMatch(note -> note.startsWith("Gelling agent as"));
    }

    @Test
    void theCautionStandsOnEverySheet() {
        assertThat(scale.cautions())
                .singleElement()
                .asString()
                .contains("toxic")
                .contains("cleared");
    }

    @Property
    void everyMassScales(@ForAll @Scale(6) @DoubleRange(min = 0.1, max = 100) double k) {
        Outcome one = catalogue.run(scale, round.with("base", Mass.ofGrams(100)));
        Outcome other = catalogue.run(scale, round.with("base", Mass.ofGrams(100 * k)));
        one.results()
                .forEach((name, value) -> assertThat(other.results().get(name).inBase())
                        .as(name)
                        .isCloseTo(k * value.inBase(), Percentage.withPercentage(1e-9)));
    }

    private static double grams(Outcome outcome, String result) {
        return ((Mass) outcome.results().get(result)).inGrams();
    }
}
