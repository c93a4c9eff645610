package org.riseandgel.core.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.TimeSpan;

class SlabDryingTest {
    // Recomputed from Crank's series for the plane sheet with an independent library, six places.
    @ParameterizedTest
    @CsvSource({
        "0.05, 0.747687, 0.996869",
        "0.1, 0.643177, 0.949305",
        "0.2, 0.495912, 0.772312",
        "0.5, 0.236050, 0.370777",
        "1.0, 0.068740, 0.107977"
    })
    void shareLeft(double fourier, double mean, double centre) {
        assertThat(SlabDrying.meanLeft(fourier)).isCloseTo(mean, within(1e-6));
        assertThat(SlabDrying.centreLeft(fourier)).isCloseTo(centre, within(1e-6));
    }

    // As above.
    @ParameterizedTest
    @CsvSource({"0.5, 0.196731", "0.1, 0.848085"})
    void fourierForAShare(double share, double fourier) {
        assertThat(SlabDrying.fourierForMeanLeft(share)).isCloseTo(fourier, within(1e-6));
    }

    // As above: half and a tenth left in the middle.
    @ParameterizedTest
    @CsvSource({"0.378748, 0.5", "1.031105, 0.1"})
    void centreShares(double fourier, double share) {
        assertThat(SlabDrying.centreLeft(fourier)).isCloseTo(share, within(1e-6));
    }

    @Test
    void nothingIsLostAtTheStartAndTheSumsMeet() {
        assertThat(SlabDrying.meanLeft(0)).isEqualTo(1);
        assertThat(SlabDrying.centreLeft(0)).isEqualTo(1);
        assertThat(SlabDrying.meanLeft(1000)).isZero();
        assertThat(SlabDrying.meanLeft(0.001)).isCloseTo(SlabDrying.meanLeft(Math.nextDown(0.001)), within(1e-13));
        assertThat(SlabDrying.centreLeft(0.001)).isCloseTo(1, within(1e-13));
    }

    @Property(tries = 200)
    void waterOnlyLeavesAndTheMiddleLast(@ForAll @DoubleRange(max = 5) @Scale(6) double fourier) {
        assertThat(SlabDrying.meanLeft(fourier + 0.01)).isLessThan(SlabDrying.meanLeft(fourier));
        assertThat(SlabDrying.centreLeft(fourier)).isGreaterThanOrEqualTo(SlabDrying.meanLeft(fourier));
    }

    @Property(tries = 200)
    void fourierIsTheInverseOfTheMean(@ForAll @DoubleRange(min = 0.001, max = 1) @Scale(6) double share) {
        assertThat(SlabDrying.meanLeft(SlabDrying.fourierForMeanLeft(share))).isCloseTo(share, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e-9, 1001, Double.NaN, Double.POSITIVE_INFINITY})
    void noFourierNumberOutOfRange(double fourier) {
        assertThatThrownBy(() -> SlabDrying.meanLeft(fourier)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> SlabDrying.centreLeft(fourier)).isInstanceOf(OutOfRangeException.class);
    }

    // Diffusion time goes with the square of the thickness, by dimensional analysis.
    @Property(tries = 100)
    void twiceAsThickTakesFourTimesAsLong(
            @ForAll @DoubleRange(min = 0.1, max = 100) double hours,
            @ForAll @DoubleRange(min = 1, max = 200) double mm) {
        TimeSpan known = TimeSpan.ofHours(hours);
        Length thin = Length.ofMillimetres(mm);
        Length thick = Length.ofMillimetres(2 * mm);
        assertThat(ThicknessTime.scaled(known, thin, thick).inHours()).isCloseTo(4 * hours, withinPercentage(1e-10));
        assertThat(ThicknessTime.thicknessFor(ThicknessTime.scaled(known, thin, thick), known, thin)
                        .inMillimetres())
                .isCloseTo(2 * mm, withinPercentage(1e-10));
    }

    @Test
    void noThicknessNoTime() {
        Length none = Length.ofMillimetres(0);
        Length some = Length.ofMillimetres(1);
        assertThatThrownBy(() -> ThicknessTime.scaled(TimeSpan.ofHours(1), none, some))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> ThicknessTime.scaled(TimeSpan.ofHours(1), some, none))
                .isInstanceOf(OutOfRangeException.class);
    }
}
