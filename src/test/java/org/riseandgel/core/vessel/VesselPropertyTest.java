package org.riseandgel.core.vessel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.data.Percentage;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.Volume;

class VesselPropertyTest {
    /** Relative accuracy promised for the inverse. */
    private static final double PROMISED = 1e-9;

    @Property
    void theHeightOfAVolumeHoldsThatVolume(
            @ForAll("vessels") Vessel vessel, @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double share) {
        double volume = share * vessel.capacity().inMillilitres();
        Length height = vessel.heightOf(Volume.ofMillilitres(volume));
        assertThat(vessel.volumeAt(height).inMillilitres()).isCloseTo(volume, within(PROMISED * volume + 1e-12));
    }

    @Property
    void theVolumeAtAHeightStandsAtThatHeight(
            @ForAll("vessels") Vessel vessel, @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double share) {
        double height = share * vessel.depth().inMillimetres();
        Volume volume = vessel.volumeAt(Length.ofMillimetres(height));
        assertThat(vessel.heightOf(volume).inMillimetres()).isCloseTo(height, within(PROMISED * height + 1e-9));
    }

    /** The last bits below the rim: what stands there must still fit. */
    @Property
    void justBelowTheRimStillFits(@ForAll("vessels") Vessel vessel, @ForAll @IntRange(min = 0, max = 40) int bits) {
        double height = vessel.depth().inMillimetres();
        for (int i = 0; i < bits; i++) {
            height = Math.nextDown(height);
        }
        Volume volume = vessel.volumeAt(Length.ofMillimetres(height));
        assertThat(volume.inMillilitres()).isLessThanOrEqualTo(vessel.capacity().inMillilitres());
        assertThat(vessel.heightOf(volume).inMillimetres())
                .isLessThanOrEqualTo(vessel.depth().inMillimetres());
    }

    @Property
    void moreVolumeStandsHigher(
            @ForAll("vessels") Vessel vessel,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.999) double share,
            @ForAll @Scale(9) @DoubleRange(min = 1e-6, max = 1e-3) double more) {
        double capacity = vessel.capacity().inMillilitres();
        Length lower = vessel.heightOf(Volume.ofMillilitres(share * capacity));
        Length higher = vessel.heightOf(Volume.ofMillilitres((share + more) * capacity));
        assertThat(higher.inMillimetres()).isGreaterThan(lower.inMillimetres());
    }

    /** A vessel k times as large each way holds k³ times as much at k times the height. */
    @Property
    void largerVesselsScaleWithTheCube(
            @ForAll @Scale(9) @DoubleRange(min = 10, max = 500) double bottom,
            @ForAll @Scale(9) @DoubleRange(min = 10, max = 500) double top,
            @ForAll @Scale(9) @DoubleRange(min = 10, max = 500) double depth,
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 1) double share,
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 10) double factor) {
        Vessel small = tapered(bottom, top, depth);
        Vessel large = tapered(bottom * factor, top * factor, depth * factor);
        Length low = Length.ofMillimetres(share * depth);
        Length high = Length.ofMillimetres(Math.min(share * factor, factor) * depth);
        assertThat(large.volumeAt(high).inMillilitres())
                .isCloseTo(
                        small.volumeAt(low).inMillilitres() * factor * factor * factor,
                        Percentage.withPercentage(1e-9));
    }

    @Property
    void aVesselUpsideDownHoldsTheSame(
            @ForAll @Scale(9) @DoubleRange(min = 10, max = 500) double bottom,
            @ForAll @Scale(9) @DoubleRange(min = 10, max = 500) double top,
            @ForAll @Scale(9) @DoubleRange(min = 10, max = 500) double depth) {
        assertThat(tapered(bottom, top, depth).capacity().inMillilitres())
                .isCloseTo(tapered(top, bottom, depth).capacity().inMillilitres(), Percentage.withPercentage(1e-12));
    }

    @Property
    void marksRiseStrictlyAndStandInTheVessel(
            @ForAll("vessels") Vessel vessel,
            @ForAll @Scale(9) @DoubleRange(min = 0.02, max = 0.9) double share,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.1) double displacedShare) {
        double capacity = vessel.capacity().inMillilitres();
        StickMarks marks = StickMarks.whole(
                vessel, Volume.ofMillilitres(share * capacity), Volume.ofMillilitres(displacedShare * capacity));
        assertThat(marks.marks()).isNotEmpty();
        double below = 0;
        int expected = 1;
        for (StickMarks.Mark mark : marks.marks()) {
            assertThat(mark.ratio()).isEqualTo(Ratio.of(expected++));
            assertThat(mark.height().inMillimetres())
                    .isGreaterThan(below)
                    .isLessThanOrEqualTo(vessel.depth().inMillimetres());
            below = mark.height().inMillimetres();
        }
    }

    @Provide
    Arbitrary<Vessel> vessels() {
        return Arbitraries.oneOf(straight(), tapered(), profiled());
    }

    private static Arbitrary<Vessel> straight() {
        return Combinators.combine(millimetres(), millimetres())
                .as((diameter, depth) ->
                        new StraightVessel(Length.ofMillimetres(diameter), Length.ofMillimetres(depth)));
    }

    private static Arbitrary<Vessel> tapered() {
        Arbitrary<Vessel> any =
                Combinators.combine(millimetres(), millimetres(), millimetres()).as(VesselPropertyTest::tapered);
        Arbitrary<Vessel> nearlyStraight = Combinators.combine(
                        millimetres(),
                        Arbitraries.doubles().between(-1e-6, 1e-6).ofScale(9),
                        millimetres())
                .as((bottom, taper, depth) -> tapered(bottom, bottom * (1 + taper), depth));
        return Arbitraries.oneOf(any, nearlyStraight);
    }

    private static Arbitrary<Vessel> profiled() {
        Arbitrary<ProfiledVessel.Row> step = Combinators.combine(
                        Arbitraries.doubles().between(5, 80).ofScale(9),
                        Arbitraries.doubles().between(20, 900).ofScale(9))
                .as((height, volume) ->
                        new ProfiledVessel.Row(Length.ofMillimetres(height), Volume.ofMillilitres(volume)));
        return step.list().ofMinSize(2).ofMaxSize(9).map(VesselPropertyTest::summedUp);
    }

    private static Vessel summedUp(List<ProfiledVessel.Row> steps) {
        List<ProfiledVessel.Row> rows = new ArrayList<>();
        double height = 0;
        double volume = 0;
        for (ProfiledVessel.Row step : steps) {
            height += step.height().inMillimetres();
            volume += step.volume().inMillilitres();
            rows.add(new ProfiledVessel.Row(Length.ofMillimetres(height), Volume.ofMillilitres(volume)));
        }
        return ProfiledVessel.of(rows);
    }

    private static Arbitrary<Double> millimetres() {
        return Arbitraries.doubles().between(10, 900).ofScale(9);
    }

    private static Vessel tapered(double bottom, double top, double depth) {
        return new TaperedVessel(Length.ofMillimetres(bottom), Length.ofMillimetres(top), Length.ofMillimetres(depth));
    }
}
