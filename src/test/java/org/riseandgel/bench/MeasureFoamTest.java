package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Volume;

class MeasureFoamTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final MeasureFoam foam = new MeasureFoam();
    private final Given cup = Given.defaultsOf(foam);

    @Test
    void aCupOfFoam() {
        Outcome outcome = catalogue.run(foam, cup);
        // by hand: (42 − 12) g ÷ 120 mL = 0.25 g/mL; 1.02 ÷ 0.25 = 4.08
        assertThat(outcome.results().get("foamDensity").inBase()).isCloseTo(0.25, within(1e-12));
        assertThat(outcome.results().get("expansion").inBase()).isCloseTo(4.08, within(1e-12));
    }

    @Test
    void slipsByHand() {
        Outcome outcome = catalogue.run(foam, cup);
        assertThat(Slips.of(outcome, Slip.TARE_LEFT_IN, "foamDensity").inBase()).isCloseTo(0.35, within(1e-12));
        assertThat(Slips.of(outcome, Slip.TARE_LEFT_IN, "expansion").inBase()).isCloseTo(1.02 / 0.35, within(1e-12));
        assertThat(Slips.of(outcome, Slip.RATIO_TURNED_ROUND, "expansion").inBase())
                .isCloseTo(0.25 / 1.02, within(1e-12));
        assertThat(Slips.of(outcome, Slip.MULTIPLIED_FOR_DIVIDED, "foamDensity").inBase())
                .isCloseTo(3600, within(1e-9));
        assertThat(Slips.of(outcome, Slip.GAIN_FOR_RATIO, "expansion").inBase()).isCloseTo(3.08, within(1e-12));
        assertThat(Slips.of(outcome, Slip.DENSITY_LEFT_OUT, "expansion").inBase())
                .isCloseTo(4, within(1e-12));
    }

    @Test
    void aFullCupThatIsLighterThanTheEmptyOneIsRefused() {
        assertThatThrownBy(() -> catalogue.run(foam, cup.with("emptyCup", Mass.ofGrams(43))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("must be more than the empty cup's 43.0 g");
    }

    /** A cup k times as large, with k times the foam and k times its own weight, holds foam of the same density. */
    @Property
    void theSizeOfTheCupDoesNotMatter(@ForAll @Scale(6) @DoubleRange(min = 0.1, max = 50) double k) {
        Given larger = cup.with("emptyCup", Mass.ofGrams(12 * k))
                .with("fullCup", Mass.ofGrams(42 * k))
                .with("cupVolume", Volume.ofMillilitres(120 * k));
        assertThat(catalogue.run(foam, larger).results().get("expansion").inBase())
                .isCloseTo(4.08, Percentage.withPercentage(1e-9));
    }
}
