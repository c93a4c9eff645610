package org.riseandgel.core.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.hummeling.if97.IF97;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.core.batch.Batch;
import org.riseandgel.core.batch.Formula;
import org.riseandgel.core.quantity.Concentration;
import org.riseandgel.core.quantity.Length;
import org.riseandgel.core.quantity.Mass;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Temperature;
import org.riseandgel.core.quantity.TimeSpan;

class BakePlanTest {
    private static final BakePlan.Rule RULE = BakePlan.Rule.usual(Length.ofMillimetres(20));
    private static final Length THICK = Length.ofMillimetres(30);
    private static final Mass WATER = Mass.ofGrams(100);

    // IAPWS-IF97, recomputed with three independent libraries. The equation used here is another one, fitted to the
    // same
    // measurements: 2 parts in 10,000 between the two.
    @ParameterizedTest
    @CsvSource({
        "0.01, 611.657, 2500.910", "5, 872.575, 2489.052", "10, 1228.184, 2477.209", "20, 2339.215, 2453.550",
        "25, 3169.747, 2441.706", "43, 8650.261, 2398.816", "50, 12351.270, 2381.974", "60, 19945.802, 2357.691",
        "100, 101417.978, 2256.473"
    })
    void steamTables(double celsius, double pascals, double kilojoules) {
        Temperature temperature = Temperature.ofCelsius(celsius);
        assertThat(SaturatedWater.at(temperature).pascals()).isCloseTo(pascals, withinPercentage(0.02));
        assertThat(Evaporation.kilojoulesPerKilogram(temperature)).isCloseTo(kilojoules, withinPercentage(0.02));
    }

    // IAPWS-IF97, official verification points of the saturation pressure.
    @ParameterizedTest
    @CsvSource({"300, 3536.58941", "500, 2638897.76"})
    void verificationPoints(double kelvins, double pascals) {
        assertThat(SaturatedWater.at(Temperature.ofKelvins(kelvins)).pascals())
                .isCloseTo(pascals, withinPercentage(0.02));
    }

    @Property(tries = 200)
    void asAnotherLibraryHasIt(@ForAll @DoubleRange(min = 0.01, max = 100) double celsius) {
        IF97 steam = new IF97();
        double kelvins = celsius + 273.15;
        // Its units are megapascals and kilojoules per kilogram.
        double heat = steam.specificEnthalpySaturatedVapourT(kelvins) - steam.specificEnthalpySaturatedLiquidT(kelvins);
        Temperature temperature = Temperature.ofCelsius(celsius);
        assertThat(Evaporation.kilojoulesPerKilogram(temperature)).isCloseTo(heat, withinPercentage(0.02));
        assertThat(SaturatedWater.at(temperature).pascals())
                .isCloseTo(steam.saturationPressureT(kelvins) * 1e6, withinPercentage(0.02));
    }

    // 100 g at 43 °C: 239.88 kJ or 66.63 Wh, from the IF97 heat above.
    @Test
    void heatForAHundredGrams() {
        Evaporation.Heat heat = Evaporation.heat(WATER, Temperature.ofCelsius(43));
        assertThat(heat.inKilojoules()).isCloseTo(239.88, within(0.02));
        assertThat(heat.inWattHours()).isCloseTo(66.63, within(0.01));
    }

    @Property(tries = 100)
    void warmerWaterNeedsLessHeatAndHasMorePressure(@ForAll @DoubleRange(min = 0.01, max = 99) double celsius) {
        Temperature cold = Temperature.ofCelsius(celsius);
        Temperature warm = Temperature.ofCelsius(celsius + 1);
        assertThat(Evaporation.kilojoulesPerKilogram(warm)).isLessThan(Evaporation.kilojoulesPerKilogram(cold));
        assertThat(SaturatedWater.at(warm).pascals())
                .isGreaterThan(SaturatedWater.at(cold).pascals());
    }

    // The standard atmosphere boils water at 99.974 °C on the scale of 1990 (from memory; IF97 gives the same).
    @Test
    void boilingPoints() {
        assertThat(Evaporation.boilingPoint(BakePlan.STANDARD_PASCALS).inCelsius())
                .isCloseTo(99.974, within(0.005));
        // 89,875 Pa is the standard pressure at 1,000 m (ASHRAE Handbook); water boils about 3.3 °C lower there.
        assertThat(Evaporation.boilingPoint(89_875).inCelsius()).isCloseTo(96.7, within(0.1));
    }

    // 110 °F, 4 hours: common practice, no source.
    @Test
    void theUsualBake() {
        BakePlan plan = BakePlan.of(Temperature.ofFahrenheit(110), RULE, THICK, WATER, BakePlan.STANDARD_PASCALS);
        assertThat(plan.tooWarmForFormula()).isFalse();
        // 4 h × (30 ÷ 20)²
        assertThat(plan.time().inHours()).isCloseTo(9, within(1e-9));
        assertThat(BakePlan.of(
                                Temperature.ofFahrenheit(110),
                                RULE,
                                Length.ofMillimetres(5),
                                WATER,
                                BakePlan.STANDARD_PASCALS)
                        .time()
                        .inHours())
                .as("never shorter than the formula's shortest")
                .isCloseTo(4, within(1e-9));
    }

    @Test
    void aWarmOvenIsSaidToBe() {
        assertThat(BakePlan.of(Temperature.ofCelsius(60), RULE, THICK, WATER, BakePlan.STANDARD_PASCALS)
                        .tooWarmForFormula())
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {99.98, 100, 120})
    void aBoilingOvenIsRefused(double celsius) {
        assertThatThrownBy(() ->
                        BakePlan.of(Temperature.ofCelsius(celsius), RULE, THICK, WATER, BakePlan.STANDARD_PASCALS))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("oven is at " + celsius
                        + " °C, must be below 99.9 °C, where water boils and steam tears the foam");
    }

    @Test
    void itBoilsSoonerHighUp() {
        Temperature oven = Temperature.ofCelsius(98);
        assertThat(BakePlan.of(oven, RULE, THICK, WATER, BakePlan.STANDARD_PASCALS)
                        .tooWarmForFormula())
                .isTrue();
        assertThatThrownBy(() -> BakePlan.of(oven, RULE, THICK, WATER, 89_875)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> BakePlan.of(oven, RULE, THICK, WATER, Double.NaN))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void waterOfABatch() {
        Batch batch = Batch.ofBase(Formula.usual(), Mass.ofGrams(150));
        Map<String, Concentration> dry = Map.of(
                "Base", Concentration.ofPercent(60),
                "Foaming agent", Concentration.ofPercent(20),
                "Water", Concentration.ofPercent(0),
                "Gelling agent", Concentration.ofPercent(25));
        // By hand: 150·0.4 + 15·0.8 + 5·1 + 16.5·0.75 = 89.375 g.
        Mass water = BatchWater.in(batch, dry);
        assertThat(water.inGrams()).isCloseTo(89.375, within(1e-9));
        assertThat(BatchWater.inPiece(
                                water, batch.total(), Mass.ofGrams(batch.total().inGrams() / 2))
                        .inGrams())
                .isCloseTo(89.375 / 2, within(1e-9));
        assertThatThrownBy(() -> BatchWater.in(batch, Map.of()))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("Base has no dry share, must have one from 0 to 100 %");
        assertThatThrownBy(() -> BatchWater.inPiece(water, Mass.ofGrams(1), Mass.ofGrams(2)))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void timeSpansOfTheRuleAreKept() {
        assertThat(RULE.shortest()).isEqualTo(TimeSpan.ofHours(4));
        assertThat(RULE.warmest().inCelsius()).isCloseTo(43.333, within(1e-3));
        assertThatThrownBy(() -> BakePlan.Rule.usual(Length.ofMillimetres(0))).isInstanceOf(OutOfRangeException.class);
    }
}
