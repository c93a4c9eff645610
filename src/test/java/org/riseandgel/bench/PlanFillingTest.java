package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Volume;

class PlanFillingTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final PlanFilling plan = new PlanFilling();
    private final Given given = Given.defaultsOf(plan);

    @Test
    void fifteenScoopsInThreeMinutes() {
        Outcome outcome = catalogue.run(plan, given);
        // by hand: 750 × 1.2 = 900 mL, ÷ 60 = 15 scoops; 10 − 4 − 1 − 2 = 3 min, ÷ 15 = 12 s
        assertThat(value(outcome, "foam")).isCloseTo(900, within(1e-9));
        assertThat(value(outcome, "scoops")).isEqualTo(15);
        assertThat(value(outcome, "scoopVolume")).isCloseTo(60, within(1e-9));
        assertThat(value(outcome, "fillTime")).isCloseTo(180, within(1e-9));
        assertThat(value(outcome, "timePerScoop")).isCloseTo(12, within(1e-9));
    }

    @Test
    void partOfAScoopIsAScoop() {
        Outcome outcome = catalogue.run(plan, given.with("scoop", Volume.ofMillilitres(59)));
        // by hand: 900 ÷ 59 = 15.25, so 16 scoops of 56.25 mL, 11.25 s each
        assertThat(value(outcome, "scoops")).isEqualTo(16);
        assertThat(value(outcome, "scoopVolume")).isCloseTo(56.25, within(1e-9));
        assertThat(value(outcome, "timePerScoop")).isCloseTo(11.25, within(1e-9));
    }

    @Test
    void slipsByHand() {
        Outcome outcome = catalogue.run(plan, given);
        // 750 ÷ 60 = 12.5, so 13 scoops of 180 ÷ 13 s; 180 × 15 s; 900 × 60
        assertThat(wrong(outcome, Slip.OVERFILL_LEFT_OUT, "foam")).isEqualTo(750);
        assertThat(wrong(outcome, Slip.OVERFILL_LEFT_OUT, "scoops")).isEqualTo(13);
        assertThat(wrong(outcome, Slip.OVERFILL_LEFT_OUT, "timePerScoop")).isCloseTo(13.846, within(1e-3));
        assertThat(wrong(outcome, Slip.MULTIPLIED_FOR_DIVIDED, "timePerScoop")).isCloseTo(2700, within(1e-6));
        assertThat(wrong(outcome, Slip.MULTIPLIED_FOR_DIVIDED, "scoops")).isCloseTo(54_000, within(1e-6));
        // 3 + 2 = 5 min, ÷ 15 = 20 s
        assertThat(wrong(outcome, Slip.RESERVE_LEFT_OUT, "fillTime")).isCloseTo(300, within(1e-9));
        assertThat(wrong(outcome, Slip.RESERVE_LEFT_OUT, "timePerScoop")).isCloseTo(20, within(1e-9));
        // 3 + 1 = 4 min, ÷ 15 = 16 s
        assertThat(wrong(outcome, Slip.CLOSING_LEFT_OUT, "fillTime")).isCloseTo(240, within(1e-9));
        assertThat(wrong(outcome, Slip.CLOSING_LEFT_OUT, "timePerScoop")).isCloseTo(16, within(1e-9));
        SlipsApart.check(plan, outcome);
    }

    @Test
    void theQuartersFillTheTime() {
        Outcome.Table table = catalogue.run(plan, given).tables().get(0);
        assertThat(table.rows()).hasSize(4);
        // by hand: from 4 min, 45 s each
        assertThat(table.rows().get(0).get(2).quantity().inBase()).isCloseTo(240, within(1e-9));
        assertThat(table.rows().get(1).get(2).quantity().inBase()).isCloseTo(285, within(1e-9));
        assertThat(table.rows().get(3).get(3).quantity().inBase()).isCloseTo(420, within(1e-9));
    }

    @Test
    void noTimeForFillingIsRefusedAtTheStart() {
        assertThatThrownBy(() -> catalogue.run(plan, given.with("fillStart", TimeSpan.ofMinutes(7))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("Do not start")
                .extracting(refused -> plan.inputAt(((OutOfRangeException) refused).what()))
                .isEqualTo("fillStart");
    }

    @Property
    void theScoopsCarryAllTheFoamAndNoneIsOverfull(@ForAll @Scale(3) @DoubleRange(min = 5, max = 500) double scoop) {
        Outcome outcome = catalogue.run(plan, given.with("scoop", Volume.ofMillilitres(scoop)));
        assertThat(value(outcome, "scoops") * value(outcome, "scoopVolume")).isCloseTo(900, within(1e-6));
        assertThat(value(outcome, "scoopVolume")).isLessThanOrEqualTo(scoop * (1 + 1e-9));
    }

    private static double value(Outcome outcome, String name) {
        return outcome.results().get(name).inBase();
    }

    private static double wrong(Outcome outcome, Slip slip, String result) {
        return Slips.of(outcome, slip, result).inBase();
    }
}
