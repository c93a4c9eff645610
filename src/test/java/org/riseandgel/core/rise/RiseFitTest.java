package org.riseandgel.core.rise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Ratio;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.statistics.ReadingNoise;

class RiseFitTest {
    private static final double[] MINUTES = {0.5, 1, 1.5, 2, 3, 4, 5, 6};

    // NIST StRD BoxBOD, divided by 100 and taken as a gain over 1; certified values.
    @Test
    void boxBodAsARise() {
        double[] minutes = {1, 2, 3, 5, 7, 10};
        double[] gain = {1.09, 1.49, 1.49, 1.91, 2.13, 2.24};
        List<RiseReading> readings = IntStream.range(0, 6)
                .mapToObj(i -> reading(minutes[i], 1 + gain[i]))
                .toList();
        RiseCurve curve = curve(RiseFit.of(readings, ReadingNoise.UNKNOWN));
        assertThat(curve.highest(0.95).value()).isCloseTo(1 + 2.1380940889, within(1e-8));
        assertThat(curve.highest(0.95).standardError()).isCloseTo(0.12354515176, within(1e-8));
        assertThat(curve.ratePerMinute(0.95).value()).isCloseTo(0.54723748542, within(1e-8));
        assertThat(curve.ratePerMinute(0.95).standardError()).isCloseTo(0.10455993237, within(1e-8));
    }

    @Property(tries = 100)
    void exactReadingsGiveBackTheRise(
            @ForAll @DoubleRange(min = 2, max = 9) double highest,
            @ForAll @DoubleRange(min = 0.3, max = 1.5) double rate) {
        RiseCurve curve = curve(RiseFit.of(rise(highest, rate)));
        assertThat(curve.highest(0.9).value()).isCloseTo(highest, withinPercentage(1e-6));
        assertThat(curve.ratePerMinute(0.9).value()).isCloseTo(rate, withinPercentage(1e-6));
        assertThat(curve.ratioAt(TimeSpan.ofMinutes(0)).asNumber()).isEqualTo(1);
    }

    @Property(tries = 100)
    void timeToARatioIsTheInverseOfTheCurve(
            @ForAll @DoubleRange(min = 1.1, max = 4.5) double wanted,
            @ForAll @DoubleRange(min = 0.3, max = 1.5) double rate) {
        RiseCurve curve = curve(RiseFit.of(rise(5, rate)));
        RiseForecast.Reached reached = (RiseForecast.Reached) curve.timeTo(Ratio.of(wanted), 0.9);
        assertThat(curve.ratioAt(reached.middle()).asNumber()).isCloseTo(wanted, within(1e-9));
        assertThat(reached.earliest().inSeconds())
                .isLessThanOrEqualTo(reached.middle().inSeconds());
        reached.latest().ifPresent(latest -> assertThat(latest.inSeconds())
                .isGreaterThanOrEqualTo(reached.middle().inSeconds()));
    }

    @Property(tries = 50)
    void moreRatioTakesLonger(@ForAll @DoubleRange(min = 1.1, max = 4) double wanted) {
        RiseCurve curve = curve(RiseFit.of(rise(5, 0.5)));
        assertThat(((RiseForecast.Reached) curve.timeTo(Ratio.of(wanted + 0.5), 0.9))
                        .middle()
                        .inSeconds())
                .isGreaterThan(((RiseForecast.Reached) curve.timeTo(Ratio.of(wanted), 0.9))
                        .middle()
                        .inSeconds());
    }

    @Test
    void surerIsWider() {
        RiseCurve curve = curve(RiseFit.of(rise(5, 0.5)));
        RiseForecast.Reached half = (RiseForecast.Reached) curve.timeTo(Ratio.of(3), 0.5);
        RiseForecast.Reached most = (RiseForecast.Reached) curve.timeTo(Ratio.of(3), 0.95);
        assertThat(most.earliest().inSeconds()).isLessThan(half.earliest().inSeconds());
        assertThat(most.latest().orElseThrow().inSeconds())
                .isGreaterThan(half.latest().orElseThrow().inSeconds());
    }

    @Test
    void theEndsOfTheForecastAreWhereAReadingMayShowTheRatio() {
        RiseCurve curve = curve(RiseFit.of(rise(5, 0.5)));
        RiseForecast.Reached reached = (RiseForecast.Reached) curve.timeTo(Ratio.of(3), 0.9);
        assertThat(curve.readingAt(reached.earliest(), 0.9).interval().high()).isCloseTo(3, within(1e-6));
        assertThat(curve.readingAt(reached.latest().orElseThrow(), 0.9)
                        .interval()
                        .low())
                .isCloseTo(3, within(1e-6));
    }

    @Test
    void theForecastHoldsTheTimeAsOftenAsItSays() {
        Random chance = new Random(11);
        DoubleUnaryOperator truth = minutes -> 1 + 4 * (1 - StrictMath.exp(-0.5 * minutes));
        double due = StrictMath.log(4 / (4 - 2.2)) / 0.5;
        long inside = IntStream.range(0, 1000)
                .filter(i -> {
                    List<RiseReading> noisy = DoubleStream.of(MINUTES)
                            .mapToObj(t -> reading(t, truth.applyAsDouble(t) + 0.1 * chance.nextGaussian()))
                            .toList();
                    // A reading at the due time shows another ratio by its own scatter; that ratio is forecast.
                    double shown = 3.2 + 0.1 * chance.nextGaussian();
                    var outcome = curve(RiseFit.of(noisy, ReadingNoise.UNKNOWN)).timeTo(Ratio.of(shown), 0.9);
                    RiseForecast.Reached reached = (RiseForecast.Reached) outcome;
                    return reached.earliest().inMinutes() <= due
                            && reached.latest().map(TimeSpan::inMinutes).orElse(Double.MAX_VALUE) >= due;
                })
                .count();
        // 90 % of 1000 with a binomial standard deviation of 9.5; four of them.
        assertThat(inside).isBetween(862L, 938L);
    }

    @Test
    void aRatioBeyondTheHighestIsSaidToBe() {
        RiseForecast forecast = curve(RiseFit.of(rise(5, 0.5))).timeTo(Ratio.of(6), 0.9);
        assertThat(forecast).isInstanceOfSatisfying(RiseForecast.BeyondHighest.class, beyond -> {
            assertThat(beyond.highest().value()).isCloseTo(5, within(1e-6));
            assertThat(beyond.wanted()).isEqualTo(Ratio.of(6));
        });
    }

    @Test
    void closeToTheHighestThereIsNoLatest() {
        RiseForecast.Reached reached =
                (RiseForecast.Reached) curve(RiseFit.of(rise(5, 0.5))).timeTo(Ratio.of(4.99), 0.9);
        assertThat(reached.latest()).isEmpty();
    }

    @Test
    void orderAndTheStartAreOfNoAccount() {
        List<RiseReading> mixed = new ArrayList<>(rise(5, 0.5));
        Collections.shuffle(mixed, new Random(1));
        mixed.add(reading(0, 1));
        assertThat(curve(RiseFit.of(mixed)).highest(0.9))
                .isEqualTo(curve(RiseFit.of(rise(5, 0.5))).highest(0.9));
    }

    @Test
    void whatReadingsCannotTellIsSaid() {
        assertReason(RiseOutcome.Reason.TOO_FEW, reading(0, 1), reading(1, 2), reading(2, 3));
        assertReason(RiseOutcome.Reason.TOO_FEW, reading(1, 2), reading(2, 3), reading(2, 3.1));
        assertReason(RiseOutcome.Reason.NOT_LEVELLING, reading(1, 2), reading(2, 3), reading(3, 4), reading(4, 5));
        assertReason(RiseOutcome.Reason.NOT_LEVELLING, reading(1, 1.5), reading(2, 3), reading(3, 6));
        assertReason(RiseOutcome.Reason.NOT_RISING, reading(1, 0.9), reading(2, 0.8), reading(4, 0.75));
        assertReason(RiseOutcome.Reason.NOT_RISING, reading(1, 1), reading(2, 1), reading(4, 1));
        assertReason(RiseOutcome.Reason.LEVEL_FROM_THE_START, reading(5, 4), reading(6, 4), reading(7, 4));
    }

    @Property(tries = 100)
    void nothingButAnOutcomeComesOfAnyReadings(
            @ForAll @DoubleRange(min = 0.5, max = 20) double one,
            @ForAll @DoubleRange(min = 0.5, max = 20) double two,
            @ForAll @DoubleRange(min = 0.5, max = 20) double three,
            @ForAll @DoubleRange(min = 0.5, max = 20) double four) {
        RiseOutcome outcome =
                RiseFit.of(List.of(reading(1, one), reading(2, two), reading(3, three), reading(5, four)));
        if (outcome instanceof RiseCurve curve) {
            assertThat(curve.highest(0.9).value()).isGreaterThan(1);
            assertThat(curve.timeTo(Ratio.of(2), 0.9)).isNotNull();
        } else {
            assertThat(((RiseOutcome.CannotTell) outcome).words()).isNotBlank();
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 0.5, 0})
    void noTimeToARatioThatIsThereFromTheStart(double wanted) {
        RiseCurve curve = curve(RiseFit.of(rise(5, 0.5)));
        assertThatThrownBy(() -> curve.timeTo(Ratio.of(wanted), 0.9))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("wanted ratio is " + wanted + ", must be more than 1");
    }

    @Test
    void impossibleReadingsAreRefused() {
        assertThatThrownBy(() -> reading(1, 0.4))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("expansion ratio is 0.4, must be from 0.5 to 100.0");
        assertThatThrownBy(() -> reading(1, Double.NaN)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> reading(Double.POSITIVE_INFINITY, 2)).isInstanceOf(OutOfRangeException.class);
    }

    private static void assertReason(RiseOutcome.Reason reason, RiseReading... readings) {
        assertThat(RiseFit.of(List.of(readings)))
                .isInstanceOfSatisfying(RiseOutcome.CannotTell.class, cannot -> assertThat(cannot.reason())
                        .isEqualTo(reason));
    }

    private static List<RiseReading> rise(double highest, double rate) {
        return DoubleStream.of(MINUTES)
                .mapToObj(t -> reading(t, 1 - (highest - 1) * StrictMath.expm1(-rate * t)))
                .toList();
    }

    private static RiseReading reading(double minutes, double ratio) {
        return new RiseReading(TimeSpan.ofMinutes(minutes), Ratio.of(ratio));
    }

    private static RiseCurve curve(RiseOutcome outcome) {
        assertThat(outcome).isInstanceOf(RiseCurve.class);
        return (RiseCurve) outcome;
    }
}
