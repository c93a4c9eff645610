package org.riseandgel.core.vessel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.core.quantity.Density;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Volume;

class VesselTest {
    /**
     * Frusta in centimetres. The first three are school-book exercises whose printed answers use π = 22/7 (308/3, 418,
     * 6512/3); the fourth is an engineering review exercise with π (3108.87). Expected: recomputed with π itself, to the
     * digits given here, hence half a unit of the fifth place.
     */
    @ParameterizedTest
    @CsvSource({"14, 2, 1, 102.62536", "21, 3, 2, 417.83182", "14, 8, 6, 2169.79333", "25, 7.5, 5, 3108.86773"})
    void textbookFrusta(double height, double wide, double narrow, double expected) {
        assertThat(tapered(2 * narrow, 2 * wide, height).capacity().inMillilitres())
                .isCloseTo(expected, within(5e-6));
        assertThat(tapered(2 * wide, 2 * narrow, height).capacity().inMillilitres())
                .isCloseTo(expected, within(5e-6));
    }

    /** The same books round with π = 22/7, so that their answers are 4 parts in 10,000 above ours. */
    @ParameterizedTest
    @CsvSource({"14, 2, 1, 102.6666667", "21, 3, 2, 418", "14, 8, 6, 2170.6666667"})
    void theBooksOwnAnswersDifferByTheirPiAlone(double height, double wide, double narrow, double printed) {
        double asPrinted = tapered(2 * narrow, 2 * wide, height).capacity().inMillilitres() * (22.0 / 7) / Math.PI;
        assertThat(asPrinted).isCloseTo(printed, Percentage.withPercentage(1e-6));
    }

    /**
     * A published answer takes the height times the difference of the end areas, over three, and finds 21π where
     * R = 5, r = 2 and h = 3 give 39π = 122.5221. The wrong way must stay wrong.
     */
    @Test
    void aPublishedWrongFormulaIsNotOurs() {
        double ours = tapered(4, 10, 3).capacity().inMillilitres();
        assertThat(ours).isCloseTo(39 * Math.PI, Percentage.withPercentage(1e-12));
        assertThat(ours).isNotCloseTo(21 * Math.PI, Percentage.withPercentage(40));
    }

    @Test
    void aStraightVesselIsATaperedOneOfEqualEnds() {
        Vessel straight = straight(12, 25);
        Vessel tapered = tapered(12, 12, 25);
        for (double share = 0; share <= 1; share += 0.125) {
            Volume volume = Volume.ofMillilitres(share * straight.capacity().inMillilitres() * (1 - 1e-12));
            // three multiplications more: a few last bits
            assertThat(tapered.heightOf(volume).inMillimetres())
                    .isCloseTo(straight.heightOf(volume).inMillimetres(), within(1e-12));
        }
    }

    /** As the taper goes, the height goes smoothly to that of the upright wall: no jump, no noise. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-3, 1e-5, 1e-7, 1e-9, 1e-11, 1e-13, 1e-15})
    void nearlyStraightIsNearlyTheSame(double taper) {
        Volume half = Volume.ofMillilitres(1400);
        double upright = straight(12, 25).heightOf(half).inMillimetres();
        double leaning = tapered(12, 12 * (1 + taper), 25).heightOf(half).inMillimetres();
        // first order: the mean diameter below the level grows by taper × h/depth ÷ 2, the area by twice that
        double expected = upright * (1 - taper * upright / 250);
        assertThat(leaning).isCloseTo(expected, within(upright * taper * taper * 2 + 1e-12));
    }

    @Test
    void aProfileOfAStraightVesselIsThatVessel() {
        Vessel straight = straight(12, 24);
        Vessel profiled = ProfiledVessel.of(Stream.of(6.0, 12.0, 18.0, 24.0)
                .map(Length::ofCentimetres)
                .map(height -> new ProfiledVessel.Row(height, straight.volumeAt(height)))
                .toList());
        for (double millimetres = 0; millimetres < 240; millimetres += 7) {
            Length height = Length.ofMillimetres(millimetres);
            assertThat(profiled.volumeAt(height).inMillilitres())
                    .isCloseTo(straight.volumeAt(height).inMillilitres(), within(1e-9));
        }
    }

    /** Twice as many rows bring the curve of a frustum at least four times nearer to it. */
    @Test
    void aFinerTableComesNearerToTheVessel() {
        Vessel beaker = tapered(8, 16, 24);
        double coarse = largestError(beaker, 6);
        double fine = largestError(beaker, 12);
        assertThat(coarse).isLessThan(beaker.capacity().inMillilitres() / 200);
        assertThat(fine).isLessThan(coarse / 4);
    }

    private static double largestError(Vessel vessel, int rows) {
        double depth = vessel.depth().inMillimetres();
        Vessel profiled = ProfiledVessel.of(Stream.iterate(1, i -> i + 1)
                .limit(rows)
                .map(i -> Length.ofMillimetres(depth * i / rows))
                .map(height -> new ProfiledVessel.Row(height, vessel.volumeAt(height)))
                .toList());
        double largest = 0;
        for (double height = 0; height <= depth; height += depth / 500) {
            Length at = Length.ofMillimetres(height);
            largest = Math.max(
                    largest,
                    Math.abs(profiled.volumeAt(at).inMillilitres()
                            - vessel.volumeAt(at).inMillilitres()));
        }
        return largest;
    }

    @Test
    void aTableOfMassesIsATableOfVolumes() {
        Vessel weighed = ProfiledVessel.ofMasses(
                List.of(
                        new ProfiledVessel.WeighedRow(Length.ofMillimetres(50), Mass.ofGrams(204)),
                        new ProfiledVessel.WeighedRow(Length.ofMillimetres(100), Mass.ofGrams(510))),
                Density.ofGramsPerMillilitre(1.02));
        assertThat(weighed.capacity().inMillilitres()).isCloseTo(500, within(1e-9));
        assertThat(weighed.volumeAt(Length.ofMillimetres(50)).inMillilitres()).isCloseTo(200, within(1e-9));
        assertThat(weighed.heightOf(Volume.ofMillilitres(0)).inMillimetres()).isZero();
    }

    @Test
    void aTableThatDoesNotRiseIsRefusedNamingTheRow() {
        assertThatThrownBy(() -> profile(50, 200, 50, 300))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("row 2 is 50.0 mm and 300.0 mL, must be more than 50.0 mm and more than 200.0 mL");
        assertThatThrownBy(() -> profile(50, 200, 60, 200)).hasMessageContaining("row 2");
        assertThatThrownBy(() -> profile(0, 5, 60, 200)).hasMessageContaining("row 1");
        assertThatThrownBy(() -> profile(50, 200)).hasMessage("table has 1 rows, must have 2 or more");
    }

    private static ProfiledVessel profile(double... heightsAndVolumes) {
        return ProfiledVessel.of(Stream.iterate(0, i -> i + 2)
                .limit(heightsAndVolumes.length / 2)
                .map(i -> new ProfiledVessel.Row(
                        Length.ofMillimetres(heightsAndVolumes[i]), Volume.ofMillilitres(heightsAndVolumes[i + 1])))
                .toList());
    }

    static Stream<Vessel> vessels() {
        return Stream.of(
                straight(12, 25), tapered(8, 16, 25), tapered(16, 8, 25), profile(50, 200, 150, 900, 250, 2000));
    }

    @ParameterizedTest
    @MethodSource("vessels")
    void whatLiesBeyondTheVesselIsRefusedWithWhatValueAndInterval(Vessel vessel) {
        double depth = vessel.depth().inMillimetres();
        double capacity = vessel.capacity().inMillilitres();
        assertThatThrownBy(() -> vessel.volumeAt(Length.ofMillimetres(depth * 1.001)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("height in millimetres is %s, must be from 0.0 to %s", depth * 1.001, depth);
        assertThatThrownBy(() -> vessel.heightOf(Volume.ofMillilitres(capacity * 1.001)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("volume in millilitres is %s, must be from 0.0 to %s", capacity * 1.001, capacity);
    }

    @ParameterizedTest
    @MethodSource("vessels")
    void emptyIsTheFloorAndFullIsTheRim(Vessel vessel) {
        assertThat(vessel.heightOf(Volume.ofMillilitres(0)).inMillimetres()).isZero();
        assertThat(vessel.heightOf(vessel.capacity()).inMillimetres())
                .isCloseTo(vessel.depth().inMillimetres(), Percentage.withPercentage(1e-10));
        assertThat(vessel.volumeAt(vessel.depth()).inMillilitres())
                .isCloseTo(vessel.capacity().inMillilitres(), Percentage.withPercentage(1e-12));
    }

    @ParameterizedTest
    @MethodSource("vessels")
    void somethingThatStaysInLiftsTheLevel(Vessel vessel) {
        Volume liquid = Volume.ofMillilitres(400);
        Volume whisk = Volume.ofMillilitres(60);
        assertThat(vessel.levelOf(liquid, whisk)).isEqualTo(vessel.heightOf(Volume.ofMillilitres(460)));
        assertThat(vessel.freeboard(liquid, whisk).inMillimetres())
                .isCloseTo(
                        vessel.depth().inMillimetres()
                                - vessel.levelOf(liquid, whisk).inMillimetres(),
                        within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, Double.NaN, Double.POSITIVE_INFINITY, -1})
    void impossibleMeasuresAreRefused(double centimetres) {
        assertThatThrownBy(() -> straight(centimetres, 25)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> straight(12, centimetres)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> tapered(centimetres, 12, 25)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> tapered(12, centimetres, 25)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> tapered(12, 16, centimetres)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void aTaperBeyondAllMeasureIsRefused() {
        assertThatThrownBy(() -> tapered(0.01, 11, 25)).hasMessageContaining("at most 1000.0 times the narrower");
    }

    private static Vessel straight(double diameter, double depth) {
        return new StraightVessel(Length.ofCentimetres(diameter), Length.ofCentimetres(depth));
    }

    private static Vessel tapered(double bottom, double top, double depth) {
        return new TaperedVessel(Length.ofCentimetres(bottom), Length.ofCentimetres(top), Length.ofCentimetres(depth));
    }
}
