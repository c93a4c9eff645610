package org.riseandgel.core.vessel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;

class StickMarksTest {
    private static final Volume NOTHING = Volume.ofMillilitres(0);
    /** 100 cm² of floor, so that 100 mL stand a centimetre high. */
    private final Vessel jar =
            new StraightVessel(Length.ofMillimetres(2 * Math.sqrt(10_000 / Math.PI)), Length.ofCentimetres(24));

    @Test
    void inAStraightVesselTheMarksStandEvenly() {
        StickMarks marks = StickMarks.whole(jar, Volume.ofMillilitres(500), NOTHING);
        // by hand: 500 mL on 100 cm² is 5 cm; the fifth mark would be at 25 cm, above the rim
        assertThat(marks.marks()).hasSize(4);
        for (int i = 0; i < 4; i++) {
            assertThat(marks.marks().get(i).height().inCentimetres()).isCloseTo(5.0 * (i + 1), within(1e-9));
        }
    }

    @Test
    void theWhiskLiftsEveryMarkByTheSameInAStraightVessel() {
        StickMarks marks = StickMarks.of(
                jar, Volume.ofMillilitres(500), List.of(Ratio.of(1), Ratio.of(4)), Volume.ofMillilitres(80));
        // by hand: 80 mL more on 100 cm² is 0.8 cm
        assertThat(marks.marks().get(0).height().inCentimetres()).isCloseTo(5.8, within(1e-9));
        assertThat(marks.marks().get(1).height().inCentimetres()).isCloseTo(20.8, within(1e-9));
    }

    /**
     * A beaker of radii 6 at the floor and 8 at the rim, 14 deep, holds 2169.79333 (school-book frustum, recomputed). A
     * fifth of it is the liquid: the mark 5× is the rim, and the marks draw together towards it.
     */
    @Test
    void inATaperedBeakerTheMarksDrawTogether() {
        Vessel beaker = new TaperedVessel(Length.ofCentimetres(12), Length.ofCentimetres(16), Length.ofCentimetres(14));
        StickMarks marks = StickMarks.whole(beaker, Volume.ofMillilitres(2169.7933 / 5), NOTHING);
        assertThat(marks.marks()).hasSize(5);
        assertThat(marks.marks().get(4).height().inCentimetres()).isCloseTo(14, within(1e-6));
        double below = 0;
        double gap = Double.MAX_VALUE;
        for (StickMarks.Mark mark : marks.marks()) {
            double next = mark.height().inCentimetres() - below;
            assertThat(next).isLessThan(gap);
            gap = next;
            below = mark.height().inCentimetres();
        }
    }

    @Test
    void aMarkBeyondTheRimIsRefusedNamingTheLargestRatioThatFits() {
        assertThatThrownBy(
                        () -> StickMarks.of(jar, Volume.ofMillilitres(500), List.of(Ratio.of(2), Ratio.of(5)), NOTHING))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("ratio is 5, must be from 1 to 4.8")
                .hasMessageContaining("the largest ratio that fits is 4.8");
    }

    @Test
    void theLargestRatioItselfFits() {
        Ratio largest = StickMarks.largestRatio(jar, Volume.ofMillilitres(700), Volume.ofMillilitres(33));
        StickMarks marks = StickMarks.of(jar, Volume.ofMillilitres(700), List.of(largest), Volume.ofMillilitres(33));
        assertThat(marks.marks().get(0).height().inCentimetres()).isCloseTo(24, within(1e-9));
    }

    @Test
    void aRatioBelowOneIsRefused() {
        assertThatThrownBy(() -> StickMarks.of(jar, Volume.ofMillilitres(500), List.of(Ratio.of(0.5)), NOTHING))
                .hasMessage("ratio is 0.5, must be from 1 to 4.8: foam is never less than its liquid");
    }

    @Test
    void aLiquidThatDoesNotFitIsRefusedWithTheRoomThereIs() {
        assertThatThrownBy(() -> StickMarks.largestRatio(jar, Volume.ofMillilitres(2350), Volume.ofMillilitres(100)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("the liquid is 2350 mL, and the vessel has room for 2300 mL");
        assertThatThrownBy(() -> StickMarks.largestRatio(jar, NOTHING, NOTHING))
                .isInstanceOf(OutOfRangeException.class);
    }
}
