package org.riseandgel.core.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;

class WaterLeftTest {
    /** By hand: 400 − 240 = 160 g at first, 280 − 240 = 40 g now, a quarter. */
    @Test
    void aQuarterByHand() {
        WaterLeft water = of(400, 280, 240);
        assertThat(water.atFirst().inGrams()).isCloseTo(160, within(1e-9));
        assertThat(water.left().inGrams()).isCloseTo(40, within(1e-9));
        assertThat(water.shareLeft().inPercent()).isCloseTo(25, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"240, 240, 240, first", "230, 240, 240, first", "400, 239, 240, now", "400, 401, 240, now"})
    void massesThatCannotBeAreRefused(double first, double now, double dry, String what) {
        assertThatThrownBy(() -> of(first, now, dry))
                .isInstanceOf(OutOfRangeException.class)
                .extracting(refused -> ((OutOfRangeException) refused).what())
                .isEqualTo(what);
    }

    /** What stands under the piece at all three weighings changes nothing. */
    @Property
    void aTrayUnderAllThreeDropsOut(
            @ForAll @DoubleRange(min = 0, max = 1) double share, @ForAll @DoubleRange(min = 0, max = 900) double tray) {
        double now = 200 + share * 150;
        assertThat(of(350 + tray, now + tray, 200 + tray).shareLeft().inPercent())
                .isCloseTo(100 * share, within(1e-9));
    }

    private static WaterLeft of(double first, double now, double dry) {
        return new WaterLeft(Mass.ofGrams(first), Mass.ofGrams(now), Mass.ofGrams(dry));
    }
}
