package org.riseandgel.core.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.core.quantity.OutOfRangeException;

class ExponentialApproachTest {
    private static final ExponentialApproach PLAIN = ExponentialApproach.throughOrigin(ReadingNoise.UNKNOWN);
    private static final ExponentialApproach STARTED = ExponentialApproach.fromUnknownStart(ReadingNoise.UNKNOWN);

    /** Eight of the eleven certified digits; the data have three or four. */
    private static final double EIGHT_DIGITS = 1e-6;

    // NIST StRD Misra1a: starts b2 = 1E-4 and 5E-4; certified values and standard deviations.
    @ParameterizedTest
    @ValueSource(doubles = {1e-4, 5e-4})
    void misra1aFromBothStarts(double start) {
        assertMisra1a(fitted(PLAIN.fitFrom(start, NistSets.misra1a())));
    }

    @Test
    void misra1aWithoutAStart() {
        assertMisra1a(fitted(PLAIN.fit(NistSets.misra1a())));
    }

    // NIST StRD BoxBOD: starts b2 = 1 and 0.75; certified values and standard deviations.
    @ParameterizedTest
    @ValueSource(doubles = {1, 0.75})
    void boxBodFromBothStarts(double start) {
        assertBoxBod(fitted(PLAIN.fitFrom(start, NistSets.boxBod())));
    }

    @Test
    void boxBodWithoutAStart() {
        assertBoxBod(fitted(PLAIN.fit(NistSets.boxBod())));
    }

    @Property(tries = 50)
    void theStartIsOfNoAccount(@ForAll @DoubleRange(min = 0.01, max = 10) double start) {
        assertBoxBod(fitted(PLAIN.fitFrom(start, NistSets.boxBod())));
    }

    @Test
    void theOrderOfReadingsIsOfNoAccount() {
        List<Point> mixed = new ArrayList<>(NistSets.misra1a());
        Collections.shuffle(mixed, new Random(7));
        assertThat(fitted(PLAIN.fit(mixed)).rate())
                .isEqualTo(fitted(PLAIN.fit(NistSets.misra1a())).rate());
    }

    @Property(tries = 100)
    void exactReadingsGiveBackTheirCurve(
            @ForAll @DoubleRange(min = -50, max = 50) double start,
            @ForAll @DoubleRange(min = 1, max = 100) double amplitude,
            @ForAll @DoubleRange(min = 0.1, max = 1) double rate) {
        FittedApproach fit = fitted(STARTED.fit(curve(start, amplitude, rate, 0, 1, 2, 3, 5, 8)));
        // Exact readings carry rounding errors of 1e-16 of 150; a rate of 0.1 magnifies them some thousand times.
        assertThat(fit.rate()).isCloseTo(rate, withinPercentage(1e-6));
        assertThat(fit.amplitude()).isCloseTo(amplitude, withinPercentage(1e-6));
        assertThat(fit.level()).isCloseTo(start + amplitude, org.assertj.core.api.Assertions.within(1e-6));
    }

    @Property(tries = 50)
    void unitsOfBothAxesAreOfNoAccount(
            @ForAll @DoubleRange(min = 0.01, max = 1000) double times,
            @ForAll @DoubleRange(min = 0.01, max = 1000) double amounts) {
        List<Point> scaled = NistSets.misra1a().stream()
                .map(point -> new Point(point.x() * times, point.y() * amounts))
                .toList();
        FittedApproach fit = fitted(PLAIN.fit(scaled));
        assertThat(fit.rate() * times).isCloseTo(5.5015643181E-4, withinPercentage(EIGHT_DIGITS));
        assertThat(fit.amplitude() / amounts).isCloseTo(238.94212918, withinPercentage(EIGHT_DIGITS));
        assertThat(fit.amplitudeError() / amounts).isCloseTo(2.7070075241, withinPercentage(1e-5));
    }

    @Test
    void placeIsTheInverseOfTheCurve() {
        FittedApproach fit = fitted(PLAIN.fit(NistSets.boxBod()));
        assertThat(fit.placeOf(fit.at(4))).isCloseTo(4, withinPercentage(1e-10));
        assertThatThrownBy(() -> fit.placeOf(fit.level())).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> fit.at(-1)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void tooFewReadingsCannotTell() {
        assertThat(PLAIN.fit(curve(0, 1, 1, 1, 2))).isEqualTo(doubt(ApproachFit.Doubt.TOO_FEW));
        assertThat(PLAIN.fit(curve(0, 1, 1, 2, 2, 2))).isEqualTo(doubt(ApproachFit.Doubt.TOO_FEW));
        assertThat(STARTED.fit(curve(0, 1, 1, 1, 2, 3))).isEqualTo(doubt(ApproachFit.Doubt.TOO_FEW));
        assertThat(PLAIN.fit(List.of())).isEqualTo(doubt(ApproachFit.Doubt.TOO_FEW));
    }

    @Test
    void whatIsKnownOfTheScatterMakesThreeReadingsEnough() {
        var known = ExponentialApproach.fromUnknownStart(new ReadingNoise(0.01, 4));
        FittedApproach fit = fitted(known.fit(curve(0, 1, 1, 0, 1, 2)));
        assertThat(fit.degreesOfFreedom()).isEqualTo(4);
        assertThat(fit.deviation()).isCloseTo(0.01, withinPercentage(1e-6));
    }

    @Test
    void aStraightLineCannotTellTheLevel() {
        assertThat(PLAIN.fit(line(1, 2, 3, 4, 5))).isEqualTo(doubt(ApproachFit.Doubt.STRAIGHT));
        assertThat(PLAIN.fit(List.of(new Point(1, 1), new Point(2, 4), new Point(3, 9))))
                .as("bends the other way")
                .isEqualTo(doubt(ApproachFit.Doubt.STRAIGHT));
    }

    @Test
    void aNearlyStraightLineIsInDoubt() {
        List<Point> noisy = List.of(
                new Point(1, 1.02), new Point(2, 1.97), new Point(3, 3.03), new Point(4, 3.96), new Point(5, 4.97));
        ApproachFit fit = PLAIN.fit(noisy);
        if (fit instanceof FittedApproach curve) {
            assertThat(curve.doubt(0.9)).contains((ApproachFit.CannotTell) doubt(ApproachFit.Doubt.STRAIGHT));
        } else {
            assertThat(fit).isEqualTo(doubt(ApproachFit.Doubt.STRAIGHT));
        }
    }

    @Test
    void certifiedSetsAreInNoDoubt() {
        assertThat(fitted(PLAIN.fit(NistSets.misra1a())).doubt(0.99)).isEmpty();
        assertThat(fitted(PLAIN.fit(NistSets.boxBod())).doubt(0.95)).isEmpty();
    }

    @Test
    void readingsThatNeverChangeCannotTell() {
        assertThat(STARTED.fit(List.of(new Point(0, 3), new Point(1, 3), new Point(2, 3), new Point(3, 3))))
                .isEqualTo(doubt(ApproachFit.Doubt.NO_CHANGE));
        assertThat(PLAIN.fit(List.of(new Point(1, 3), new Point(2, 3), new Point(3, 3))))
                .isEqualTo(doubt(ApproachFit.Doubt.LEVEL));
    }

    @Test
    void noPlaceBelowZero() {
        assertThatThrownBy(() -> PLAIN.fit(List.of(new Point(-1, 3))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("x is -1.0, must be from 0");
    }

    @Test
    void aNewReadingFallsIntoItsIntervalAsOftenAsItSays() {
        Random chance = new Random(20_240_101);
        long inside = IntStream.range(0, 2000)
                .filter(i -> {
                    List<Point> noisy = DoubleStream.of(1, 2, 3, 4, 5, 6, 8, 10)
                            .mapToObj(
                                    x -> new Point(x, 5 * (1 - StrictMath.exp(-0.4 * x)) + 0.1 * chance.nextGaussian()))
                            .toList();
                    double next = 5 * (1 - StrictMath.exp(-0.4 * 7)) + 0.1 * chance.nextGaussian();
                    return fitted(PLAIN.fit(noisy)).readingAt(7, 0.9).interval().contains(next);
                })
                .count();
        // 90 % of 2000 with a binomial standard deviation of 13; four of them.
        assertThat(inside).isBetween(1800L - 54, 1800L + 54);
    }

    private static void assertMisra1a(FittedApproach fit) {
        assertThat(fit.amplitude()).isCloseTo(238.94212918, withinPercentage(EIGHT_DIGITS));
        assertThat(fit.rate()).isCloseTo(5.5015643181E-4, withinPercentage(EIGHT_DIGITS));
        assertThat(fit.amplitudeError()).isCloseTo(2.7070075241, withinPercentage(EIGHT_DIGITS));
        assertThat(fit.rateError()).isCloseTo(7.2668688436E-6, withinPercentage(EIGHT_DIGITS));
        assertThat(fit.residualSum()).isCloseTo(0.12455138894, withinPercentage(EIGHT_DIGITS));
        assertThat(fit.deviation()).isCloseTo(0.10187876330, withinPercentage(EIGHT_DIGITS));
    }

    private static void assertBoxBod(FittedApproach fit) {
        assertThat(fit.amplitude()).isCloseTo(213.80940889, withinPercentage(EIGHT_DIGITS));
        assertThat(fit.rate()).isCloseTo(0.54723748542, withinPercentage(EIGHT_DIGITS));
        assertThat(fit.amplitudeError()).isCloseTo(12.354515176, withinPercentage(EIGHT_DIGITS));
        assertThat(fit.rateError()).isCloseTo(0.10455993237, withinPercentage(EIGHT_DIGITS));
        assertThat(fit.residualSum()).isCloseTo(1168.0088766, withinPercentage(EIGHT_DIGITS));
        assertThat(fit.deviation()).isCloseTo(17.088072423, withinPercentage(EIGHT_DIGITS));
    }

    private static List<Point> curve(double start, double amplitude, double rate, double... places) {
        return DoubleStream.of(places)
                .mapToObj(x -> new Point(x, start - amplitude * StrictMath.expm1(-rate * x)))
                .toList();
    }

    private static List<Point> line(double... places) {
        return DoubleStream.of(places).mapToObj(x -> new Point(x, 2 * x)).toList();
    }

    private static FittedApproach fitted(ApproachFit fit) {
        assertThat(fit).isInstanceOf(FittedApproach.class);
        return (FittedApproach) fit;
    }

    private static ApproachFit doubt(ApproachFit.Doubt doubt) {
        return new ApproachFit.CannotTell(doubt);
    }
}
