package org.riseandgel.core.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.TimeSpan;
import org.riseandgel.core.quantity.Volume;

class AirTest {
    private static final Volume ROOM = Volume.ofLitres(30_000);
    private static final SaltInAir CLEAN = SaltInAir.ofMilligramsPerCubicMetre(0);
    private static final SaltRelease TEN_A_MINUTE = new SaltRelease(SaltMass.ofMilligrams(10), TimeSpan.ofMinutes(1));

    // Computed from the conventional atomic weights of IUPAC/CIAAW with two independent implementations.
    @Test
    void sodiumSalt() {
        Fluorosilicate salt = Fluorosilicate.SODIUM;
        SaltMass gram = SaltMass.ofGrams(1);
        assertThat(salt.gramsPerMole()).isCloseTo(188.054957532, within(1e-9));
        assertThat(salt.fluorideFraction()).isCloseTo(0.606154820, within(1e-9));
        assertThat(salt.fluorideIn(gram).inMilligrams()).isCloseTo(606.1548, within(1e-4));
        assertThat(salt.acidMillimoles(gram)).isCloseTo(21.27037783, within(1e-8));
        assertThat(salt.silica(gram).inGrams()).isCloseTo(0.319497, within(1e-6));
    }

    // As above; the acid from the long list of the same computation.
    @Test
    void potassiumSalt() {
        Fluorosilicate salt = Fluorosilicate.POTASSIUM;
        assertThat(salt.gramsPerMole()).isCloseTo(220.272018972, within(1e-9));
        assertThat(salt.fluorideFraction()).isCloseTo(0.517498407, within(1e-9));
        assertThat(salt.acidMillimoles(SaltMass.ofGrams(1))).isCloseTo(18.15937, within(1e-5));
    }

    // NIOSH, documentation for immediately dangerous concentrations, fluorides (1994): 70 mg/kg of the sodium salt is
    // listed as 297 mg F/m³ and 125 mg/kg as 530, that is LD × 70 kg ÷ 10 m³ as fluoride, printed to the milligram.
    @ParameterizedTest
    @CsvSource({"70, 297, 297.016", "125, 530, 530.385"})
    void fluorideFractionAsPublished(double perKilogram, double printed, double computed) {
        double fluoride = Fluorosilicate.SODIUM
                .asFluoride(SaltInAir.ofMilligramsPerCubicMetre(perKilogram * 70 / 10))
                .inMilligramsPerCubicMetre();
        assertThat(fluoride).isCloseTo(printed, within(1.0));
        assertThat(fluoride).isCloseTo(computed, within(1e-3));
    }

    // OSHA and NIOSH: 2.5 mg/m³ as F; NIOSH, immediately dangerous: 250 (from memory). As salt: computed as above.
    @ParameterizedTest
    @CsvSource({"2.5, 4.124359", "250, 412.4359"})
    void limitsAsSalt(double asFluoride, double asSalt) {
        assertThat(Fluorosilicate.SODIUM
                        .asSalt(FluorideInAir.ofMilligramsPerCubicMetre(asFluoride))
                        .inMilligramsPerCubicMetre())
                .isCloseTo(asSalt, withinPercentage(2e-5));
        assertThat(Shift.LIMIT.inMilligramsPerCubicMetre()).isEqualTo(2.5);
    }

    // What comes apart is what was there: 2 M + Si + 6 F = 2 M + SiO₂ + 4 H + 6 F − 2 H₂O, in g/mol, by the weights.
    @Test
    void massIsKept() {
        for (Fluorosilicate salt : Fluorosilicate.values()) {
            SaltMass mole = SaltMass.ofGrams(salt.gramsPerMole());
            double acid = salt.acidMillimoles(mole) / 1000 * 1.008;
            double metals = salt.gramsPerMole() - 28.085 - 6 * 18.998403162;
            double out = metals
                    + salt.silica(mole).inGrams()
                    + acid
                    + salt.fluorideIn(mole).inGrams();
            assertThat(out - 2 * 18.015).isCloseTo(salt.gramsPerMole(), within(1e-9));
        }
    }

    @Property(tries = 100)
    void saltAndFluorideAreInverse(@ForAll Fluorosilicate salt, @ForAll @DoubleRange(min = 0, max = 1e6) double mg) {
        assertThat(salt.saltFor(salt.fluorideIn(SaltMass.ofMilligrams(mg))).inMilligrams())
                .isCloseTo(mg, within(1e-9 * (mg + 1)));
        assertThat(salt.asSalt(salt.asFluoride(SaltInAir.ofMilligramsPerCubicMetre(mg)))
                        .inMilligramsPerCubicMetre())
                .isCloseTo(mg, within(1e-9 * (mg + 1)));
    }

    @Test
    void nothingTakesSaltForFluoride() {
        assertThat(Shift.class.getMethods())
                .filteredOn(method -> method.getDeclaringClass() == Shift.class)
                .noneMatch(method -> Arrays.asList(method.getParameterTypes()).contains(SaltInAir.class));
        assertThat(SaltInAir.class.isAssignableFrom(FluorideInAir.class)).isFalse();
        assertThat(FluorideInAir.class.isAssignableFrom(SaltInAir.class)).isFalse();
        assertThat(SaltMass.class.isAssignableFrom(FluorideMass.class)).isFalse();
        assertThat(FluorideMass.class.isAssignableFrom(SaltMass.class)).isFalse();
    }

    // CDC, guideline of 1994, MMWR 43, table S3-1: minutes to remove 90, 99 and 99.9 % with perfect mixing, printed to
    // the
    // minute; the largest rounding difference is 0.49.
    @ParameterizedTest
    @CsvSource({
        "2, 69, 138, 207", "4, 35, 69, 104", "6, 23, 46, 69", "10, 14, 28, 41", "12, 12, 23, 35", "15, 9, 18, 28",
        "20, 7, 14, 21", "50, 3, 6, 8", "1, 138, 276, 414", "3, 46, 92, 138", "5, 28, 55, 83", "8, 17, 35, 52",
        "25, 6, 11, 17", "30, 5, 9, 14", "40, 3, 7, 10"
    })
    void minutesToClear(double changes, double ninety, double ninetyNine, double almostAll) {
        WellMixedRoom room = new WellMixedRoom(ROOM, changes);
        assertThat(room.timeToRemove(0.9).inMinutes()).isCloseTo(ninety, within(0.5));
        assertThat(room.timeToRemove(0.99).inMinutes()).isCloseTo(ninetyNine, within(0.5));
        assertThat(room.timeToRemove(0.999).inMinutes()).isCloseTo(almostAll, within(0.5));
    }

    // One zone with a constant source, 10 mg/min, 50 m³/h, 30 m³; computed independently, limit 12 mg/m³.
    @ParameterizedTest
    @CsvSource({"15, 4.089112", "30, 6.784821", "60, 9.733493", "120, 11.571912"})
    void releaseIntoARoom(double minutes, double expected) {
        WellMixedRoom room = WellMixedRoom.withFlow(ROOM, 50);
        assertThat(room.after(TimeSpan.ofMinutes(minutes), CLEAN, TEN_A_MINUTE).inMilligramsPerCubicMetre())
                .isCloseTo(expected, within(1e-6));
        assertThat(room.settled(TEN_A_MINUTE).inMilligramsPerCubicMetre()).isCloseTo(12, within(1e-9));
    }

    // Without air change C = G·t ÷ V by mass balance: 10 mg/min for 30 min in 30 m³ is 10 mg/m³.
    @Test
    void withoutAirChangeItPilesUp() {
        WellMixedRoom shut = new WellMixedRoom(ROOM, 0);
        assertThat(shut.after(TimeSpan.ofMinutes(30), CLEAN, TEN_A_MINUTE).inMilligramsPerCubicMetre())
                .isCloseTo(10, within(1e-9));
        assertThat(new WellMixedRoom(ROOM, 1e-9)
                        .after(TimeSpan.ofMinutes(30), CLEAN, TEN_A_MINUTE)
                        .inMilligramsPerCubicMetre())
                .isCloseTo(10, within(1e-6));
        assertThatThrownBy(() -> shut.timeToRemove(0.5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> shut.settled(TEN_A_MINUTE)).isInstanceOf(OutOfRangeException.class);
    }

    @Property(tries = 100)
    void halfIsGoneAfterItsHalfLife(@ForAll @DoubleRange(min = 0.1, max = 60) double changes) {
        WellMixedRoom room = new WellMixedRoom(ROOM, changes);
        SaltInAir start = SaltInAir.ofMilligramsPerCubicMetre(8);
        assertThat(room.decayed(room.timeToRemove(0.5), start).inMilligramsPerCubicMetre())
                .isCloseTo(4, within(1e-9));
        assertThat(room.decayed(TimeSpan.ofSeconds(0), start)).isEqualTo(start);
    }

    @Property(tries = 100)
    void moreTimeMoreDustAndMoreAirLess(
            @ForAll @DoubleRange(min = 0.1, max = 20) double changes,
            @ForAll @DoubleRange(min = 1, max = 100) double minutes) {
        WellMixedRoom room = new WellMixedRoom(ROOM, changes);
        double here = dust(room, minutes);
        assertThat(dust(room, minutes + 1)).isGreaterThan(here);
        assertThat(dust(new WellMixedRoom(ROOM, changes + 1), minutes)).isLessThan(here);
        assertThat(here).isLessThan(room.settled(TEN_A_MINUTE).inMilligramsPerCubicMetre());
    }

    // 29 CFR 1910.1000(d)(1), worked example: (2·150 + 2·75 + 4·50) ÷ 8 = 81.25, there in ppm of another substance.
    @Test
    void eightHourAverage() {
        Shift shift = new Shift(List.of(spell(150, 2), spell(75, 2), spell(50, 4)));
        assertThat(shift.average().inMilligramsPerCubicMetre()).isCloseTo(81.25, within(1e-12));
        assertThat(new Shift(List.of(spell(10, 1))).average().inMilligramsPerCubicMetre())
                .as("always divided by 8")
                .isCloseTo(1.25, within(1e-12));
        assertThat(new Shift(List.of(spell(5, 4))).shareOf(Shift.LIMIT)).isCloseTo(1, within(1e-12));
        assertThat(new Shift(List.of()).average().inMilligramsPerCubicMetre()).isZero();
    }

    @Test
    void noDayHasMoreThanTwentyFourHours() {
        assertThatThrownBy(() -> new Shift(List.of(spell(1, 20), spell(1, 5))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("hours of all spells together is 25.0, must be from 0.0 to 24.0");
        assertThatThrownBy(() -> new Shift(List.of()).shareOf(FluorideInAir.ofMilligramsPerCubicMetre(0)))
                .isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void whatIsNoAmountIsRefused(double value) {
        assertThatThrownBy(() -> SaltMass.ofMilligrams(value)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> FluorideMass.ofGrams(value)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> SaltInAir.ofMilligramsPerCubicMetre(value)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> FluorideInAir.ofMilligramsPerCubicMetre(value))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new WellMixedRoom(ROOM, value)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new WellMixedRoom(ROOM, 1).timeToRemove(value))
                .isInstanceOf(OutOfRangeException.class);
    }

    private static double dust(WellMixedRoom room, double minutes) {
        return room.after(TimeSpan.ofMinutes(minutes), CLEAN, TEN_A_MINUTE).inMilligramsPerCubicMetre();
    }

    private static Shift.Spell spell(double air, double hours) {
        return new Shift.Spell(FluorideInAir.ofMilligramsPerCubicMetre(air), TimeSpan.ofHours(hours));
    }
}
