package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.riseandgel.core.gel.GelForecast;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Unit;

class ForecastGelTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final ForecastGel gel = new ForecastGel();
    private final Given usual = Given.defaultsOf(gel);

    /** Common practice, no source: 12.5 min in the middle, nine of ten gels from 10 to 15 min. The two ends are unequal. */
    @Test
    void theUsualBatch() {
        Outcome outcome = catalogue.run(gel, usual);
        assertThat(minutes(outcome, "median")).isCloseTo(12.5, within(1e-9));
        assertThat(minutes(outcome, "low")).isBetween(9.0, 11.0);
        assertThat(minutes(outcome, "high")).isBetween(14.0, 17.0);
    }

    /** docs/formulas/gel.md, worked there by the core itself: 11 php at 15 °C gels from 13.00 to 28.2 min, 19.1 in the middle. */
    @Test
    void aColdBatch() {
        Outcome outcome = catalogue.run(gel, usual.with("temperature", Temperature.ofCelsius(15)));
        assertThat(minutes(outcome, "low")).isCloseTo(13.00, within(0.005));
        assertThat(minutes(outcome, "median")).isCloseTo(19.1, within(0.05));
        assertThat(minutes(outcome, "high")).isCloseTo(28.2, within(0.05));
    }

    /** By hand with a = 1: twice the dose gels in half the time; the slip turns it into twice the time. */
    @Test
    void theDoseAndItsSlips() {
        Outcome outcome = catalogue.run(gel, usual.with("dose", Php.ofPartsPerHundred(22)));
        assertThat(minutes(outcome, "median")).isCloseTo(6.25, within(1e-9));
        assertThat(Slips.of(outcome, Slip.RATIO_TURNED_ROUND, "median").in(Unit.MINUTE))
                .isCloseTo(25, within(1e-9));
        assertThat(Slips.of(outcome, Slip.DOSE_LEFT_OUT, "median").in(Unit.MINUTE))
                .isCloseTo(12.5, within(1e-9));
        assertThat(Slips.of(outcome, Slip.MIDDLE_FOR_EARLY, "low").in(Unit.MINUTE))
                .isCloseTo(6.25, within(1e-9));
    }

    /** By hand: 13.2 php is a fifth more, so 12.5 ÷ 1.2; the slip takes a fifth off, 12.5 × 0.8. */
    @Test
    void aFifthMoreDoesNotTakeAFifthOff() {
        Outcome outcome = catalogue.run(gel, usual.with("dose", Php.ofPartsPerHundred(13.2)));
        assertThat(minutes(outcome, "median")).isCloseTo(10.41667, within(1e-5));
        assertThat(Slips.of(outcome, Slip.DIFFERENCE_FOR_RATIO, "median").in(Unit.MINUTE))
                .isCloseTo(10, within(1e-9));
        assertThat(outcome.slipsOf("median"))
                .extracting(Outcome.SlipAnswer::slip)
                .doesNotContain(Slip.WHOLE_STEP);
    }

    /** Twice as long, or half as long, however small the step is. */
    @ParameterizedTest
    @CsvSource({"16, 25", "26, 6.25"})
    void aWholeStepIsTakenForAPart(double celsius, double wrong) {
        Outcome outcome = catalogue.run(gel, usual.with("temperature", Temperature.ofCelsius(celsius)));
        assertThat(Slips.of(outcome, Slip.WHOLE_STEP, "median").in(Unit.MINUTE)).isCloseTo(wrong, within(1e-9));
    }

    /** Ea of 50 kJ/mol is a factor of 1.96735 between 20 and 30 °C (recomputed from the Arrhenius form). */
    @Test
    void theTemperatureAndItsSlips() {
        double at20 = minutes(catalogue.run(gel, usual.with("temperature", Temperature.ofCelsius(20))), "median");
        Outcome warm = catalogue.run(gel, usual.with("temperature", Temperature.ofCelsius(30)));
        assertThat(at20 / minutes(warm, "median")).isCloseTo(1.96735, within(5e-6));
        double factor = 12.5 / minutes(warm, "median");
        assertThat(Slips.of(warm, Slip.COLD_FOR_WARM, "median").in(Unit.MINUTE)).isCloseTo(12.5 * factor, within(1e-9));
        assertThat(Slips.of(warm, Slip.TEMPERATURE_LEFT_OUT, "median").in(Unit.MINUTE))
                .isCloseTo(12.5, within(1e-9));
    }

    @Property(tries = 50)
    void theWorkingEndsWhereTheCoreDoes(
            @ForAll @DoubleRange(min = 5, max = 25) double dose,
            @ForAll @DoubleRange(min = 5, max = 40) double celsius) {
        Given given =
                usual.with("dose", Php.ofPartsPerHundred(dose)).with("temperature", Temperature.ofCelsius(celsius));
        Outcome outcome = catalogue.run(gel, given);
        GelForecast core = GelInputs.forecast(given);
        Percentage rounding = Percentage.withPercentage(1e-9);
        assertThat(minutes(outcome, "low")).isCloseTo(core.low().inMinutes(), rounding);
        assertThat(minutes(outcome, "median")).isCloseTo(core.median().inMinutes(), rounding);
        assertThat(minutes(outcome, "high")).isCloseTo(core.high().inMinutes(), rounding);
    }

    /** One record at the reference moves ln t₀ by a fifth of its distance: 12.5 × (20 ÷ 12.5)^(1/5) . */
    @Test
    void ownRecordsMoveIt() {
        Given.Row slow = Given.Row.of(Php.ofPartsPerHundred(11), Temperature.ofCelsius(21), TimeSpan.ofMinutes(20));
        Outcome outcome = catalogue.run(gel, usual.reading("records", List.of(slow)));
        assertThat(minutes(outcome, "median")).isCloseTo(12.5 * Math.pow(1.6, 0.2), within(1e-9));
        assertThat(outcome.notes()).extracting(Outcome.Note::text).contains("It has learned from {} gels of yours.");
    }

    /** Records that say more agent gels later and warmth gels later: the working is written all the same. */
    @Test
    void recordsThatTurnTheRuleRoundStillGiveAWorking() {
        List<Given.Row> odd = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            odd.add(row(6 + 2 * i, 10 + 4 * i, 5 * Math.pow(1.6, i)));
            odd.add(row(6 + 2 * i, 34 - 4 * i, 20 * Math.pow(1.4, i)));
        }
        Given given = usual.reading("records", odd).with("dose", Php.ofPartsPerHundred(14));
        Outcome outcome = catalogue.run(gel, given);
        assertThat(outcome.step("doseFactor").orElseThrow().formula()).isEqualTo("(d ÷ d₀)^a");
        assertThat(minutes(outcome, "median"))
                .isCloseTo(GelInputs.forecast(given).median().inMinutes(), Percentage.withPercentage(1e-9));
    }

    private static Given.Row row(double php, double celsius, double minutes) {
        return Given.Row.of(Php.ofPartsPerHundred(php), Temperature.ofCelsius(celsius), TimeSpan.ofMinutes(minutes));
    }

    private static double minutes(Outcome outcome, String result) {
        return outcome.results().get(result).in(Unit.MINUTE);
    }
}
