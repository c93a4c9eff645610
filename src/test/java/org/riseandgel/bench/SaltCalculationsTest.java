package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Flow;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Rate;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.core.quantity.Volume;

class SaltCalculationsTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final CountFluoride fluoride = new CountFluoride();
    private final CountAcid acid = new CountAcid();
    private final EstimateRoomAir room = new EstimateRoomAir();
    private final AverageShift shift = new AverageShift();

    /** Fluoride fractions from conventional atomic weights of IUPAC/CIAAW: 0.606154820 and 0.517498407. */
    @ParameterizedTest
    @CsvSource({"sodium, 188.054957532, 0.606154820", "potassium, 220.272018972, 0.517498407"})
    void fluorideInAGram(String salt, double molarMass, double share) {
        Given gram = Given.defaultsOf(fluoride).choosing("salt", salt).with("saltMass", Mass.ofGrams(1));
        Outcome outcome = catalogue.run(fluoride, gram);
        assertThat(outcome.step("molarMass").orElseThrow().value().inBase()).isCloseTo(molarMass, within(1e-9));
        assertThat(outcome.results().get("fluoride").in(Unit.GRAM)).isCloseTo(share, within(1e-9));
        assertThat(outcome.results().get("fluorideShare").inBase()).isCloseTo(100 * share, within(1e-7));
        assertThat(Slips.of(outcome, Slip.SALT_FOR_FLUORIDE, "fluoride").in(Unit.GRAM))
                .isEqualTo(1);
        assertThat(Slips.of(outcome, Slip.ONE_ATOM, "fluoride").in(Unit.GRAM)).isCloseTo(share / 6, within(1e-9));
    }

    /** 2.5 mg/m³ as F is 4.124359 mg/m³ of the sodium salt, and 2.5 ÷ 0.517498407 of the potassium salt. */
    @ParameterizedTest
    @CsvSource({"sodium, 4.124359", "potassium, 4.830933"})
    void theLimitIsForFluorideAndMoreWhenCountedAsSalt(String salt, double limit) {
        Outcome outcome = catalogue.run(fluoride, Given.defaultsOf(fluoride).choosing("salt", salt));
        assertThat(outcome.results().get("limitAsSalt").in(Unit.MILLIGRAM_PER_CUBIC_METRE))
                .isCloseTo(limit, within(5e-7));
        assertThat(Slips.of(outcome, Slip.SALT_FOR_FLUORIDE, "limitAsSalt").in(Unit.MILLIGRAM_PER_CUBIC_METRE))
                .isCloseTo(2.5, within(1e-12));
        assertThat(Slips.of(outcome, Slip.MULTIPLIED_FOR_DIVIDED, "limitAsSalt").in(Unit.MILLIGRAM_PER_CUBIC_METRE))
                .isCloseTo(6.25 / limit, within(1e-6));
    }

    /** A drinking-water guideline (NHMRC) has 59.5 % fluoride for a grade of 98.5 %; exact weights give 59.71 %. */
    @Test
    void purityCounts() {
        Given grade = Given.defaultsOf(fluoride)
                .with("saltMass", Mass.ofGrams(100))
                .with("purity", Concentration.ofPercent(98.5));
        Outcome outcome = catalogue.run(fluoride, grade);
        assertThat(outcome.results().get("fluoride").in(Unit.GRAM)).isCloseTo(59.706, within(5e-4));
        assertThat(Slips.of(outcome, Slip.PURITY_LEFT_OUT, "fluoride").in(Unit.GRAM))
                .isCloseTo(60.615482, within(1e-6));
    }

    /** From the same weights: 21.27037783 mmol H⁺ and 0.319497 g SiO₂ per g; 18.15937 mmol per g of the potassium salt. */
    @Test
    void acidFromAGram() {
        Given gram = Given.defaultsOf(acid).with("saltMass", Mass.ofGrams(1));
        Outcome outcome = catalogue.run(acid, gram);
        assertThat(outcome.results().get("acid").inBase()).isCloseTo(21.27037783, within(1e-8));
        assertThat(outcome.results().get("silica").in(Unit.GRAM)).isCloseTo(0.319497, within(5e-7));
        assertThat(Slips.of(outcome, Slip.ONE_ATOM, "acid").inBase()).isCloseTo(21.27037783 / 4, within(1e-8));
        assertThat(Slips.of(outcome, Slip.DIVIDED_FOR_MULTIPLIED, "acid").inBase())
                .isCloseTo(21.27037783 / 16, within(1e-8));
        Outcome potassium = catalogue.run(acid, gram.choosing("salt", "potassium"));
        assertThat(potassium.results().get("acid").inBase()).isCloseTo(18.15937, within(5e-6));
    }

    /** One zone with a constant source, 10 mg/min, 50 m³/h, 30 m³: 4.089112 at 15 min, 9.733493 at 60 min (recomputed). */
    @ParameterizedTest
    @CsvSource({"15, 4.089112", "60, 9.733493"})
    void aRoomWithASteadySource(double minutes, double salt) {
        Given dusty = dusty().with("time", TimeSpan.ofMinutes(minutes));
        Outcome outcome = catalogue.run(room, dusty);
        assertThat(air(outcome, "saltAir")).isCloseTo(salt, within(5e-7));
        assertThat(air(outcome, "fluorideAir")).isCloseTo(salt * 0.606154820, within(5e-7));
        assertThat(outcome.results().get("shareOfLimit").inBase()).isCloseTo(salt * 0.606154820 / 2.5, within(5e-7));
    }

    @Test
    void airChangesSayTheSameAsFlow() {
        Given changes = dusty().choosing("ventilation", "changes").with("airChanges", Rate.ofPerHour(50.0 / 30));
        Outcome outcome = catalogue.run(room, changes);
        assertThat(air(outcome, "saltAir")).isCloseTo(9.733493, within(5e-7));
        assertThat(outcome.step("airChanges")).isEmpty();
    }

    /** By hand: 600 mg in 30 m³ is 20 mg/m³ without any air change; with it the air tends to 600 ÷ 50 = 12 mg/m³. */
    @Test
    void roomSlipsByHand() {
        Outcome outcome = catalogue.run(room, dusty());
        assertThat(wrongAir(outcome, Slip.AIR_CHANGE_LEFT_OUT, "saltAir")).isCloseTo(20, within(1e-9));
        assertThat(wrongAir(outcome, Slip.SETTLED_FOR_NOW, "saltAir")).isCloseTo(12, within(1e-9));
        assertThat(wrongAir(outcome, Slip.SALT_FOR_FLUORIDE, "fluorideAir")).isCloseTo(9.733493, within(5e-7));
        Outcome still = catalogue.run(room, dusty().with("flow", Flow.ofCubicMetresPerHour(0)));
        assertThat(air(still, "saltAir")).isCloseTo(20, within(1e-9));
    }

    @Test
    void aboveTheLimitIsSaidSoAndBelowClearsNobody() {
        assertThat(catalogue.run(room, dusty()).findings().get("againstLimit")).startsWith("Above the limit");
        assertThat(catalogue.run(room, Given.defaultsOf(room)).findings().get("againstLimit"))
                .contains("clears nobody");
        assertThat(List.of(room, shift)).allSatisfy(calculation -> assertThat(calculation.cautions())
                .anyMatch(caution -> caution.contains("clear nobody")));
    }

    /** 29 CFR 1910.1000(d)(1): (2·150 + 2·75 + 4·50) ÷ 8 = 81.25, there for another substance. */
    @Test
    void theRegulationsOwnExample() {
        Outcome outcome = catalogue.run(shift, spells(150, 2, 75, 2, 50, 4));
        assertThat(air(outcome, "average")).isCloseTo(81.25, within(1e-9));
        assertThat(outcome.results().get("shareOfLimit").inBase()).isCloseTo(32.5, within(1e-9));
        // by hand: (150 + 75 + 50) ÷ 3
        assertThat(wrongAir(outcome, Slip.TIMES_LEFT_OUT, "average")).isCloseTo(275.0 / 3, within(1e-9));
    }

    /** By hand: 1.6 × 0.5 + 0.6 × 1.5 + 0.2 × 2 = 2.1; ÷ 8 = 0.2625, ÷ the 4 h worked = 0.525. */
    @Test
    void theDivisorIsAlwaysEightHours() {
        Outcome outcome = catalogue.run(shift, Given.defaultsOf(shift));
        assertThat(air(outcome, "average")).isCloseTo(0.2625, within(1e-12));
        assertThat(wrongAir(outcome, Slip.TOTAL_FOR_EIGHT, "average")).isCloseTo(0.525, within(1e-12));
    }

    /** 4.124359 mg/m³ of the sodium salt over 8 h are the limit of 2.5 mg/m³ as F. */
    @Test
    void saltIsTurnedIntoFluoride() {
        Given salt = spells(4.124359, 8).choosing("measuredAs", "sodium");
        Outcome outcome = catalogue.run(shift, salt);
        assertThat(air(outcome, "average")).isCloseTo(2.5, within(5e-7));
        assertThat(wrongAir(outcome, Slip.SALT_FOR_FLUORIDE, "average")).isCloseTo(4.124359, within(1e-9));
    }

    @Test
    void aDayHas24Hours() {
        assertThatThrownBy(() -> catalogue.run(shift, spells(1, 20, 1, 5)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("24");
    }

    private Given dusty() {
        return Given.defaultsOf(room)
                .with("dust", Mass.ofGrams(0.010))
                .with("room", Volume.ofLitres(30_000))
                .with("flow", Flow.ofCubicMetresPerHour(50));
    }

    private Given spells(double... pairs) {
        return Given.defaultsOf(shift)
                .reading(
                        "spells",
                        IntStream.range(0, pairs.length / 2)
                                .mapToObj(i -> Given.Row.of(
                                        Quantity.of(pairs[2 * i], Unit.MILLIGRAM_PER_CUBIC_METRE),
                                        TimeSpan.ofHours(pairs[2 * i + 1])))
                                .toList());
    }

    private static double air(Outcome outcome, String result) {
        return outcome.results().get(result).in(Unit.MILLIGRAM_PER_CUBIC_METRE);
    }

    private static double wrongAir(Outcome outcome, Slip slip, String result) {
        return Slips.of(outcome, slip, result).in(Unit.MILLIGRAM_PER_CUBIC_METRE);
    }
}
