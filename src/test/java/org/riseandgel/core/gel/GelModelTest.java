package org.riseandgel.core.gel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Php;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.TimeSpan;

class GelModelTest {
    private static final Php DOSE = Php.ofPartsPerHundred(11);
    private static final Temperature ROOM = Temperature.ofCelsius(21);
    private static final GelPrior USUAL = GelPrior.usual();
    private static final GelModel BELIEF = GelModel.believing(USUAL);

    // Gelation 10 to 15 minutes after the agent is added: common practice, no source. 90 % of gels at the reference.
    @Test
    void ninetyPercentOfGelsFallInTenToFifteenMinutes() {
        double chance = BELIEF.chanceGelledBy(TimeSpan.ofMinutes(15), DOSE, ROOM)
                - BELIEF.chanceGelledBy(TimeSpan.ofMinutes(10), DOSE, ROOM);
        assertThat(chance).isCloseTo(0.9, within(1e-9));
        assertThat(BELIEF.forecast(DOSE, ROOM, 0.9).median().inMinutes()).isCloseTo(12.5, within(1e-9));
        assertThat(BELIEF.chanceGelledBy(TimeSpan.ofMinutes(12.5), DOSE, ROOM)).isCloseTo(0.5, within(1e-9));
    }

    // Ea 50 kJ/mol is a factor of 1.96735 between 20 and 30 °C: recomputed from Arrhenius' law with R = 8.314462618.
    @Test
    void tenDegreesMoreHalveTheTime() {
        double cold =
                BELIEF.forecast(DOSE, Temperature.ofCelsius(20), 0.9).median().inMinutes();
        double warm =
                BELIEF.forecast(DOSE, Temperature.ofCelsius(30), 0.9).median().inMinutes();
        assertThat(cold / warm).isCloseTo(1.96735, within(1e-5));
    }

    // Hydrogen iodide, a textbook example: k is 9.51e-9 at 500 K and 1.10e-5 at 600 K, which is 175.93 kJ/mol.
    @Test
    void theGasConstantGivesTheTextbookEnergy() {
        double energy = GelModel.GAS_CONSTANT * StrictMath.log(1.10e-5 / 9.51e-9) / (1 / 500.0 - 1 / 600.0);
        assertThat(energy / 1000).isCloseTo(175.93, within(0.005));
    }

    // As above: a factor of exactly 2 is 51.216 kJ/mol.
    @Test
    void aFactorOfTwoHasItsActivationEnergy() {
        GelModel model = GelModel.believing(withActivation(51.2162));
        double cold =
                model.forecast(DOSE, Temperature.ofCelsius(20), 0.9).median().inMinutes();
        double warm =
                model.forecast(DOSE, Temperature.ofCelsius(30), 0.9).median().inMinutes();
        assertThat(cold / warm).isCloseTo(2, within(1e-5));
    }

    @Test
    void twiceTheDoseHalvesTheTime() {
        double once = BELIEF.forecast(DOSE, ROOM, 0.9).median().inMinutes();
        double twice =
                BELIEF.forecast(Php.ofPartsPerHundred(22), ROOM, 0.9).median().inMinutes();
        assertThat(once / twice).isCloseTo(2, within(1e-9));
    }

    // Closed form at the reference: the belief is worth 4 records, so one record has a fifth of the say on ln t₀.
    @Property(tries = 50)
    void oneRecordAtTheReferenceHasAFifthOfTheSay(@ForAll @DoubleRange(min = 5, max = 40) double minutes) {
        GelModel model = GelModel.learned(USUAL, List.of(record(11, 21, minutes)));
        double expected = Math.exp(0.8 * Math.log(12.5) + 0.2 * Math.log(minutes));
        assertThat(model.referenceTime().inMinutes()).isCloseTo(expected, withinPercentage(1e-9));
        assertThat(model.doseExponent()).isCloseTo(1, within(1e-9));
        assertThat(model.activationEnergy()).isCloseTo(50, within(1e-9));
    }

    // As above for the scatter: ν·s² = 6·s₀² + 4/5·(y − ln t₀)² on 7 degrees of freedom.
    @Test
    void oneRecordTeachesTheScatter() {
        double before = BELIEF.scatter();
        double off = Math.log(20 / 12.5);
        GelModel model = GelModel.learned(USUAL, List.of(record(11, 21, 20)));
        assertThat(model.scatter()).isCloseTo(Math.sqrt((6 * before * before + 0.8 * off * off) / 7), within(1e-12));
        assertThat(width(model)).isGreaterThan(width(BELIEF));
    }

    // Fifty records against a belief worth four: the belief keeps 4 parts in 54 of ln t₀.
    @Test
    void fiftyRecordsNearlyReplaceTheBelief() {
        GelModel model = GelModel.learned(USUAL, school(50, 15, 0.7, 70, 0.08));
        assertThat(model.referenceTime().inMinutes()).isCloseTo(15, withinPercentage(3));
        // Standard errors of a slope over such doses and temperatures are 0.09 and 3.7 kJ/mol; twice that.
        assertThat(model.doseExponent()).isCloseTo(0.7, within(0.18));
        assertThat(model.activationEnergy()).isCloseTo(70, within(8.0));
        assertThat(model.scatter()).isCloseTo(0.08, within(0.025));
    }

    @Test
    void aSchoolFarOffIsFollowedButStaysWide() {
        GelModel model = GelModel.learned(USUAL, school(50, 20, 0.7, 70, 0.08));
        assertThat(model.referenceTime().inMinutes()).isCloseTo(20, withinPercentage(5));
        assertThat(model.scatter()).isBetween(0.08, 0.16);
    }

    @Test
    void manyRecordsAreOrdinaryLeastSquares() {
        List<GelRecord> records = school(3000, 20, 0.7, 70, 0.05);
        GelModel model = GelModel.learned(USUAL, records);
        double[] least = leastSquares(records);
        assertThat(Math.log(model.referenceTime().inMinutes())).isCloseTo(least[0], within(2e-3));
        assertThat(model.doseExponent()).isCloseTo(-least[1], within(5e-3));
        assertThat(model.activationEnergy()).isCloseTo(least[2] * 8.314462618, within(0.5));
    }

    @Property(tries = 30)
    void theOrderOfRecordsIsOfNoAccount(@ForAll long seed) {
        List<GelRecord> records = school(40, 14, 1.1, 45, 0.1);
        List<GelRecord> mixed = new ArrayList<>(records);
        Collections.shuffle(mixed, new Random(seed));
        GelModel straight = GelModel.learned(USUAL, records);
        GelModel shuffled = GelModel.learned(USUAL, mixed);
        assertThat(shuffled.forecast(DOSE, ROOM, 0.9)).isEqualTo(straight.forecast(DOSE, ROOM, 0.9));
        assertThat(shuffled.scatter()).isEqualTo(straight.scatter());
        assertThat(shuffled.records()).isEqualTo(straight.records());
    }

    @Test
    void aForecastHoldsTheGelAsOftenAsItSays() {
        List<GelRecord> all = school(1200, 14, 0.9, 55, 0.1);
        GelModel model = GelModel.learned(USUAL, all.subList(0, 200));
        long inside = all.subList(200, 1200).stream()
                .filter(gel -> {
                    GelForecast forecast = model.forecast(gel.dose(), gel.temperature(), 0.9);
                    return gel.gelTime().inSeconds() >= forecast.low().inSeconds()
                            && gel.gelTime().inSeconds() <= forecast.high().inSeconds();
                })
                .count();
        // 90 % of 1000, binomial deviation 9.5, and a scatter known to 5 % moves it by about 10 more.
        assertThat(inside).isBetween(850L, 945L);
    }

    @Test
    void aSlipOfThePenIsWeighedDown() {
        List<GelRecord> records = new ArrayList<>(school(20, 12.5, 1, 50, 0.08));
        GelModel clean = GelModel.learned(USUAL, records);
        records.add(record(11, 21, 125));
        GelModel slipped = GelModel.learned(USUAL, records);
        double moved =
                slipped.referenceTime().inMinutes() / clean.referenceTime().inMinutes();
        // Fully believed it would pull ln t₀ by ln 10 ÷ 25, that is by 9.6 %.
        assertThat(moved).isBetween(1.0, 1.06);
        assertThat(width(slipped)).as("but it is not ignored").isGreaterThan(width(clean));
        assertThat(slipped.records())
                .filteredOn(weighed -> weighed.weight() < 1)
                .extracting(weighed -> weighed.record().gelTime().inMinutes())
                .containsExactly(125.0);
    }

    @Test
    void aSchoolThatDiffersIsBelieved() {
        List<GelRecord> slow = IntStream.range(0, 7)
                .mapToObj(i -> record(11, 21, 30 + 0.5 * i))
                .toList();
        assertThat(GelModel.learned(USUAL, slow).records()).allMatch(weighed -> weighed.weight() == 1);
        GelModel settled = GelModel.learned(USUAL, school(50, 30, 1, 50, 0.05));
        assertThat(settled.records()).allMatch(weighed -> weighed.weight() > 0.9);
    }

    @Test
    void oneDoseAlwaysTeachesNothingOfDose() {
        List<GelRecord> alike = IntStream.range(0, 200)
                .mapToObj(i -> record(11, 21, 12.5 * Math.exp(0.05 * Math.sin(i))))
                .toList();
        GelModel model = GelModel.learned(USUAL, alike);
        assertThat(model.doseExponent()).isCloseTo(1, within(1e-6));
        assertThat(model.activationEnergy()).isCloseTo(50, within(1e-6));
        GelForecast there = model.forecast(DOSE, ROOM, 0.9);
        GelForecast elsewhere = model.forecast(Php.ofPartsPerHundred(18), Temperature.ofCelsius(12), 0.9);
        assertThat(elsewhere.high().inSeconds() / elsewhere.low().inSeconds())
                .as("wider where nothing was seen")
                .isGreaterThan(1.2 * there.high().inSeconds() / there.low().inSeconds());
    }

    @Property(tries = 100)
    void moreAgentAndMoreWarmthGelSooner(
            @ForAll @DoubleRange(min = 5, max = 30) double php,
            @ForAll @DoubleRange(min = 5, max = 35) double celsius) {
        Php dose = Php.ofPartsPerHundred(php);
        Temperature temperature = Temperature.ofCelsius(celsius);
        double here = BELIEF.forecast(dose, temperature, 0.9).median().inSeconds();
        assertThat(BELIEF.forecast(Php.ofPartsPerHundred(php + 1), temperature, 0.9)
                        .median()
                        .inSeconds())
                .isLessThan(here);
        assertThat(BELIEF.forecast(dose, Temperature.ofCelsius(celsius + 1), 0.9)
                        .median()
                        .inSeconds())
                .isLessThan(here);
    }

    @Property(tries = 100)
    void theEndsHaveTheirShareOnEitherSide(
            @ForAll @DoubleRange(min = 5, max = 30) double php,
            @ForAll @DoubleRange(min = 0.1, max = 0.98) double probability) {
        Php dose = Php.ofPartsPerHundred(php);
        GelForecast forecast = BELIEF.forecast(dose, ROOM, probability);
        assertThat(BELIEF.chanceGelledBy(forecast.low(), dose, ROOM)).isCloseTo((1 - probability) / 2, within(1e-7));
        assertThat(BELIEF.chanceGelledBy(forecast.high(), dose, ROOM)).isCloseTo((1 + probability) / 2, within(1e-7));
        assertThat(BELIEF.chanceGelledBy(TimeSpan.ofSeconds(0), dose, ROOM)).isZero();
    }

    @ParameterizedTest
    @CsvSource({"0.5, 21", "101, 21", "11, -1", "11, 51"})
    void noForecastOutOfRange(double php, double celsius) {
        assertThatThrownBy(() -> BELIEF.forecast(Php.ofPartsPerHundred(php), Temperature.ofCelsius(celsius), 0.9))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("must be from");
        assertThatThrownBy(() -> record(php, celsius, 12)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void impossibleBeliefsAndTimesAreRefused() {
        assertThatThrownBy(() -> record(11, 21, 0.1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> BELIEF.forecast(DOSE, ROOM, 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> withActivation(Double.NaN)).isInstanceOf(OutOfRangeException.class);
    }

    private static double width(GelModel model) {
        GelForecast forecast = model.forecast(DOSE, ROOM, 0.9);
        return forecast.high().inSeconds() / forecast.low().inSeconds();
    }

    private static GelPrior withActivation(double kilojoules) {
        return new GelPrior(
                USUAL.dose(),
                USUAL.temperature(),
                USUAL.middle(),
                USUAL.low(),
                USUAL.high(),
                USUAL.share(),
                USUAL.exponent(),
                USUAL.exponentDeviation(),
                kilojoules,
                USUAL.activationDeviation(),
                USUAL.records(),
                USUAL.scatterRecords());
    }

    private static List<GelRecord> school(int n, double middle, double exponent, double kilojoules, double scatter) {
        Random chance = new Random(1234);
        return IntStream.range(0, n)
                .mapToObj(i -> {
                    double php = 9 + 5 * chance.nextDouble();
                    double celsius = 15 + 12 * chance.nextDouble();
                    double log = Math.log(middle)
                            - exponent * Math.log(php / 11)
                            + kilojoules * 1000 / 8.314462618 * (1 / (celsius + 273.15) - 1 / 294.15)
                            + scatter * chance.nextGaussian();
                    return record(php, celsius, Math.exp(log));
                })
                .toList();
    }

    private static double[] leastSquares(List<GelRecord> records) {
        RealMatrix x = MatrixUtils.createRealMatrix(records.size(), 3);
        RealVector y = MatrixUtils.createRealVector(new double[records.size()]);
        for (int i = 0; i < records.size(); i++) {
            GelRecord gel = records.get(i);
            x.setRow(i, new double[] {
                1,
                Math.log(gel.dose().inPartsPerHundred() / 11),
                1000 / gel.temperature().inKelvins() - 1000 / 294.15
            });
            y.setEntry(i, Math.log(gel.gelTime().inMinutes()));
        }
        return new QRDecomposition(x).getSolver().solve(y).toArray();
    }

    private static GelRecord record(double php, double celsius, double minutes) {
        return new GelRecord(Php.ofPartsPerHundred(php), Temperature.ofCelsius(celsius), TimeSpan.ofMinutes(minutes));
    }
}
