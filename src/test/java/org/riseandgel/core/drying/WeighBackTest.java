package org.riseandgel.core.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.TimeSpan;

class WeighBackTest {
    private static final Mass GRAM = Mass.ofGrams(1);

    /** Closed form: three weighings at 0, h, 2h of an exponential give its rate as ln((m₀ − m₁) ÷ (m₁ − m₂)) ÷ h. */
    @Test
    void threeWeighingsByHand() {
        DryingCurve curve = curve(WeighBack.of(List.of(weighing(0, 400), weighing(2, 300), weighing(4, 250)), GRAM));
        assertThat(curve.ratePerHour(0.9).value()).isCloseTo(Math.log(2) / 2, withinPercentage(1e-8));
        assertThat(curve.dryGrams(0.9).value()).isCloseTo(200, within(1e-6));
        assertThat(curve.waterAt(TimeSpan.ofHours(4)).inGrams()).isCloseTo(50, within(1e-6));
        DryingForecast half = curve.timeTo(0.125, 0.9);
        assertThat(half.middle().inHours()).isCloseTo(6, within(1e-7));
        assertThat(half.early().inHours()).isBetween(5.0, 6.0);
        assertThat(half.late().inHours()).isBetween(6.0, 7.0);
    }

    // As above: k·h = ln(D₁/D₂), so its variance is s²·(1/D₁² + (1/D₁ + 1/D₂)² + 1/D₂²) with D₁ 100 g and D₂ 50 g; s is
    // 1 g
    // ÷ √12 on 4 degrees of freedom, for which Student's factor is 2.131847 (90 %, from memory).
    @Test
    void theIntervalByHand() {
        DryingCurve curve = curve(WeighBack.of(List.of(weighing(0, 400), weighing(2, 300), weighing(4, 250)), GRAM));
        double error = Math.sqrt(1 / 12.0) * Math.sqrt(0.01 * 0.01 + 0.03 * 0.03 + 0.02 * 0.02);
        double reach = Math.exp(2.131847 * error / Math.log(2));
        DryingForecast forecast = curve.timeTo(0.125, 0.9);
        assertThat(forecast.late().inHours()).isCloseTo(6 * reach, withinPercentage(1e-4));
        assertThat(forecast.early().inHours()).isCloseTo(6 / reach, withinPercentage(1e-4));
    }

    @Property(tries = 100)
    void exactWeighingsGiveBackTheirCurve(
            @ForAll @DoubleRange(min = 50, max = 500) double dry,
            @ForAll @DoubleRange(min = 20, max = 500) double water,
            @ForAll @DoubleRange(min = 0.15, max = 1) double rate) {
        DryingCurve curve = curve(WeighBack.of(drying(dry, water, rate), Mass.ofGrams(0.1)));
        assertThat(curve.dryGrams(0.9).value()).isCloseTo(dry, within(1e-5));
        assertThat(curve.ratePerHour(0.9).value()).isCloseTo(rate, withinPercentage(1e-5));
        assertThat(curve.shareLeftAt(curve.timeTo(0.02, 0.9).middle())).isCloseTo(0.02, within(1e-9));
    }

    @Property(tries = 50)
    void dryerTakesLonger(@ForAll @DoubleRange(min = 0.01, max = 0.9) double share) {
        DryingCurve curve = curve(WeighBack.of(drying(200, 150, 0.4), GRAM));
        assertThat(curve.timeTo(share / 2, 0.9).middle().inHours())
                .isGreaterThan(curve.timeTo(share, 0.9).middle().inHours());
        assertThat(curve.timeTo(share, 0.99).late().inHours())
                .isGreaterThan(curve.timeTo(share, 0.9).late().inHours());
    }

    @Property(tries = 50)
    void theUnitOfMassIsOfNoAccount(@ForAll @DoubleRange(min = 0.01, max = 100) double times) {
        List<PieceWeighing> scaled = drying(200, 150, 0.4).stream()
                .map(w -> new PieceWeighing(
                        w.time(), Mass.ofGrams(times * w.mass().inGrams())))
                .toList();
        DryingForecast forecast =
                curve(WeighBack.of(scaled, Mass.ofGrams(times))).timeTo(0.02, 0.9);
        DryingForecast plain = curve(WeighBack.of(drying(200, 150, 0.4), GRAM)).timeTo(0.02, 0.9);
        assertThat(forecast.late().inHours()).isCloseTo(plain.late().inHours(), withinPercentage(1e-5));
    }

    @Test
    void timeIsCountedAsTheWeighingsAre() {
        List<PieceWeighing> later = drying(200, 150, 0.4).stream()
                .map(w -> new PieceWeighing(TimeSpan.ofHours(w.time().inHours() + 3), w.mass()))
                .toList();
        DryingCurve curve = curve(WeighBack.of(later, GRAM));
        assertThat(curve.timeTo(1, 0.9).middle().inHours()).isCloseTo(3, within(1e-12));
        assertThatThrownBy(() -> curve.massAt(TimeSpan.ofHours(2)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("time in hours is 2.0, must be from 3.0");
    }

    @Test
    void orderIsOfNoAccount() {
        List<PieceWeighing> mixed = new ArrayList<>(drying(200, 150, 0.4));
        Collections.shuffle(mixed, new Random(2));
        assertThat(curve(WeighBack.of(mixed, GRAM)).dryGrams(0.9))
                .isEqualTo(curve(WeighBack.of(drying(200, 150, 0.4), GRAM)).dryGrams(0.9));
    }

    @Test
    void whatWeighingsCannotTellIsSaid() {
        assertReason(DryingOutcome.Reason.TOO_FEW, weighing(0, 400), weighing(1, 300));
        assertReason(DryingOutcome.Reason.TOO_FEW, weighing(0, 400), weighing(1, 300), weighing(1, 300));
        assertReason(DryingOutcome.Reason.NOT_LEVELLING, weighing(0, 400), weighing(1, 380), weighing(2, 360));
        assertReason(DryingOutcome.Reason.NOT_LEVELLING, weighing(0, 400), weighing(1, 380), weighing(2, 360.5));
        assertReason(DryingOutcome.Reason.NOT_DRYING, weighing(0, 300), weighing(1, 300), weighing(2, 300));
        assertReason(DryingOutcome.Reason.NOT_DRYING, weighing(0, 300), weighing(1, 320), weighing(2, 330));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, 1.1, Double.NaN})
    void noShareOutsideNoughtToOne(double share) {
        DryingCurve curve = curve(WeighBack.of(drying(200, 150, 0.4), GRAM));
        assertThatThrownBy(() -> curve.timeTo(share, 0.9)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void impossibleWeighingsAreRefused() {
        assertThatThrownBy(() -> weighing(1, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> WeighBack.of(drying(200, 150, 0.4), Mass.ofGrams(0)))
                .isInstanceOf(OutOfRangeException.class);
    }

    private static void assertReason(DryingOutcome.Reason reason, PieceWeighing... weighings) {
        assertThat(WeighBack.of(List.of(weighings), GRAM))
                .isInstanceOfSatisfying(DryingOutcome.CannotTell.class, cannot -> {
                    assertThat(cannot.reason()).isEqualTo(reason);
                    assertThat(cannot.words()).isNotBlank();
                });
    }

    private static List<PieceWeighing> drying(double dry, double water, double rate) {
        return DoubleStream.of(0, 1, 2, 3, 5, 8)
                .mapToObj(hours -> weighing(hours, dry + water * StrictMath.exp(-rate * hours)))
                .toList();
    }

    private static PieceWeighing weighing(double hours, double grams) {
        return new PieceWeighing(TimeSpan.ofHours(hours), Mass.ofGrams(grams));
    }

    private static DryingCurve curve(DryingOutcome outcome) {
        assertThat(outcome).isInstanceOf(DryingCurve.class);
        return (DryingCurve) outcome;
    }
}
