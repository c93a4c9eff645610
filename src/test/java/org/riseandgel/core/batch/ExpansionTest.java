package org.riseandgel.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;

class ExpansionTest {
    @Test
    void aCupOfFoam() {
        Density foam = Expansion.foamDensity(Mass.ofGrams(42), Mass.ofGrams(12), Volume.ofMillilitres(120));
        // by hand: 30 g ÷ 120 mL, and 1.02 ÷ 0.25
        assertThat(foam.inGramsPerMillilitre()).isCloseTo(0.25, within(1e-15));
        assertThat(Expansion.byDensity(Density.ofGramsPerMillilitre(1.02), foam).asNumber())
                .isCloseTo(4.08, within(1e-12));
    }

    /** The mass stays while it is whipped, so both ways to the ratio agree. */
    @Property
    void ratioByDensityIsRatioByVolume(
            @ForAll @Scale(9) @DoubleRange(min = 1, max = 5_000) double mass,
            @ForAll @Scale(9) @DoubleRange(min = 0.8, max = 1.3) double density,
            @ForAll @Scale(9) @DoubleRange(min = 1, max = 12) double ratio) {
        Density liquid = Density.ofGramsPerMillilitre(density);
        Volume before = Batch.volumeOf(Mass.ofGrams(mass), liquid);
        Volume after = Expansion.foamFrom(before, Ratio.of(ratio));
        Density foam = Expansion.foamDensity(Mass.ofGrams(mass), after);
        assertThat(Expansion.byDensity(liquid, foam).asNumber()).isCloseTo(ratio, Percentage.withPercentage(1e-10));
        assertThat(Expansion.byVolume(after, before).asNumber()).isCloseTo(ratio, Percentage.withPercentage(1e-10));
        assertThat(Expansion.liquidFor(after, Ratio.of(ratio)).inMillilitres())
                .isCloseTo(before.inMillilitres(), Percentage.withPercentage(1e-10));
    }

    @Test
    void aCupThatWeighsNoMoreThanEmptyIsRefused() {
        assertThatThrownBy(() -> Expansion.foamMass(Mass.ofGrams(12), Mass.ofGrams(12)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("the filled cup is 12.0 g, must be more than the empty cup's 12.0 g");
        assertThatThrownBy(() -> Expansion.foamDensity(Mass.ofGrams(13), Mass.ofGrams(12), Volume.ofMillilitres(0)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Expansion.byVolume(Volume.ofMillilitres(10), Volume.ofMillilitres(0)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Expansion.liquidFor(Volume.ofMillilitres(10), Ratio.of(0.9)))
                .hasMessageContaining("expansion ratio is 0.9, must be from 1.0");
    }
}
