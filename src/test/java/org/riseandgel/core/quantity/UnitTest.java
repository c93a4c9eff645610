package org.riseandgel.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

class UnitTest {
    /** NIST SP 811 (2008), appendix B.8 and B.9: exact by definition. */
    @ParameterizedTest
    @CsvSource({
        "OUNCE, 28.349523125",
        "POUND, 453.59237",
        "INCH, 25.4",
        "FOOT, 304.8",
        "US_FLUID_OUNCE, 29.5735295625",
        "US_TABLESPOON, 14.78676478125",
        "US_CUP, 236.5882365",
        "US_QUART, 946.352946",
        "US_GALLON, 3785.411784",
        "IMPERIAL_FLUID_OUNCE, 28.4130625",
        "IMPERIAL_GALLON, 4546.09",
        "CUBIC_INCH, 16.387064",
        "CUBIC_FOOT, 28316.846592",
        "SQUARE_INCH, 645.16",
        "CUBIC_FOOT_PER_MINUTE, 1.69901079552",
        "LITRE_PER_MINUTE, 0.06",
        "LITRE_PER_SECOND, 3.6",
        "WATT_HOUR, 3.6",
        "PER_MINUTE, 60"
    })
    void factorsAreExact(Unit unit, String factor) {
        assertThat(unit.factor()).isEqualTo(Rational.of(factor));
    }

    /** 1 ft³ is 0.028316846592 m³ and an hour has 60 min, so 50 ft³/min are 84.950539776 m³/h; rounding of a double. */
    @Test
    void flowsConvert() {
        assertThat(Flow.ofCubicFeetPerMinute(50).inCubicMetresPerHour()).isCloseTo(84.950539776, within(1e-12));
        assertThat(Flow.ofLitresPerMinute(500).inCubicMetresPerHour()).isEqualTo(30);
        assertThat(Flow.ofCubicMetresPerHour(30).inLitresPerMinute()).isCloseTo(500, within(1e-12));
    }

    /** A watt is a joule per second, so 1 Wh is 3.6 kJ; 239.882 kJ is the heat of 100 g of steam at 43 °C, 66.634 Wh. */
    @Test
    void energiesConvert() {
        assertThat(Energy.ofKilojoules(239.882).inWattHours()).isCloseTo(66.634, within(5e-4));
        assertThat(Energy.ofWattHours(1).inKilojoules()).isEqualTo(3.6);
    }

    /** NIST SP 811 (2008), appendix B.8: 1 lb/ft³ = 16.018 463 373 960 138 kg/m³; within the last digit printed. */
    @Test
    void aPoundPerCubicFootInKilogramsPerCubicMetre() {
        assertThat(Density.ofPoundsPerCubicFoot(1).inKilogramsPerCubicMetre())
                .isCloseTo(16.018463373960138, within(1e-14));
    }

    /** indriya and systems-common as second opinion; the tablespoon there is rounded, hence 1e-8 of the value. */
    @Test
    void factorsAgreeWithAnIndependentLibrary() {
        Map<Unit, javax.measure.Unit<Volume>> volumes = Map.of(
                Unit.US_FLUID_OUNCE, USCustomary.FLUID_OUNCE,
                Unit.US_TABLESPOON, USCustomary.TABLESPOON,
                Unit.US_CUP, USCustomary.CUP,
                Unit.US_GALLON, USCustomary.GALLON_LIQUID,
                Unit.CUBIC_INCH, USCustomary.CUBIC_INCH,
                Unit.CUBIC_FOOT, USCustomary.CUBIC_FOOT,
                Unit.IMPERIAL_GALLON, Imperial.GALLON_UK,
                Unit.IMPERIAL_FLUID_OUNCE, Imperial.FLUID_OUNCE,
                Unit.LITRE, Units.LITRE);
        volumes.forEach((ours, theirs) -> agrees(ours, 1e6 * factor(theirs, Units.CUBIC_METRE)));
        Map<Unit, javax.measure.Unit<Length>> lengths =
                Map.of(Unit.INCH, USCustomary.INCH, Unit.FOOT, USCustomary.FOOT, Unit.METRE, Units.METRE);
        lengths.forEach((ours, theirs) -> agrees(ours, 1e3 * factor(theirs, Units.METRE)));
        Map<Unit, javax.measure.Unit<Mass>> masses =
                Map.of(Unit.OUNCE, USCustomary.OUNCE, Unit.POUND, USCustomary.POUND, Unit.GRAM, Units.GRAM);
        masses.forEach((ours, theirs) -> agrees(ours, 1e3 * factor(theirs, Units.KILOGRAM)));
    }

    private static <Q extends javax.measure.Quantity<Q>> double factor(
            javax.measure.Unit<Q> unit, javax.measure.Unit<Q> base) {
        return unit.getConverterTo(base).convert(1.0);
    }

    private static void agrees(Unit ours, double theirs) {
        assertThat(ours.toBase(1.0)).as(ours.code()).isCloseTo(theirs, within(1e-8 * theirs));
    }

    /** By definition of the two scales; 110 °F is 43 1/3 °C. */
    @Test
    void temperaturesHaveAnOffset() {
        assertThat(Unit.DEGREE_FAHRENHEIT.toBase(Rational.of(32))).isEqualTo(Rational.ZERO);
        assertThat(Unit.DEGREE_FAHRENHEIT.toBase(Rational.of(212))).isEqualTo(Rational.of(100));
        assertThat(Unit.DEGREE_FAHRENHEIT.toBase(Rational.of(110))).isEqualTo(Rational.of(130, 3));
        assertThat(Unit.KELVIN.fromBase(Rational.ZERO)).isEqualTo(Rational.of("273.15"));
    }

    /** indriya as second opinion; it works in doubles by way of kelvins, hence 1e-9. */
    @Test
    void fahrenheitAgreesWithAnIndependentLibrary() {
        var toCelsius = USCustomary.FAHRENHEIT.getConverterTo(Units.CELSIUS);
        for (double fahrenheit : new double[] {-40, 0, 32, 68, 110, 212}) {
            assertThat(Unit.DEGREE_FAHRENHEIT.toBase(fahrenheit))
                    .isCloseTo(toCelsius.convert(fahrenheit), within(1e-9));
        }
    }

    /** Absolute zero by definition: 0 K, -273.15 °C, -459.67 °F; none of the three may fall below it by rounding. */
    @Test
    void absoluteZeroIsATemperatureOnEveryScale() {
        assertThat(Temperature.ofKelvins(0).inCelsius()).isEqualTo(-273.15);
        assertThat(Temperature.ofFahrenheit(-459.67).inCelsius()).isEqualTo(-273.15);
        assertThatThrownBy(() -> Temperature.ofCelsius(-273.16))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("-273.16")
                .hasMessageContaining("-273.15");
    }

    @Test
    void temperatureDifferencesHaveNoOffset() {
        assertThat(TemperatureDifference.ofFahrenheitSteps(18).inCelsiusSteps()).isEqualTo(10);
        assertThat(Unit.FAHRENHEIT_STEP.toBase(Rational.of(18))).isEqualTo(Rational.of(10));
        assertThat(Unit.DEGREE_FAHRENHEIT.whenAskedFor(QuantityKind.TEMPERATURE_DIFFERENCE))
                .isEqualTo(Unit.FAHRENHEIT_STEP);
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void conversionThereAndBackIsExact(Unit unit) {
        Rational value = Rational.of(355, 113);
        assertThat(unit.fromBase(unit.toBase(value))).isEqualTo(value);
        assertThat(unit.fromBase(unit.toBase(3.25))).isCloseTo(3.25, within(1e-12));
        assertThat(unit.toBase(3.25)).isCloseTo(unit.toBase(Rational.of("3.25")).toDouble(), within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void bothPartsOfEveryFactorAreExactInADouble(Unit unit) {
        assertThat(unit.factor().numerator().bitLength()).isLessThanOrEqualTo(53);
        assertThat(unit.factor().denominator().bitLength()).isLessThanOrEqualTo(53);
    }

    @Test
    void simpleConversionsAreExactInDoubles() {
        assertThat(org.riseandgel.core.quantity.Length.ofInches(3).inMillimetres())
                .isEqualTo(76.2);
        assertThat(Unit.INCH.fromBase(76.2)).isEqualTo(3.0);
        assertThat(Unit.MILLIGRAM.toBase(12.0)).isEqualTo(0.012);
    }

    @Test
    void codesAreUniqueAndFindTheirUnit() {
        Set<String> codes = new HashSet<>();
        for (Unit unit : Unit.values()) {
            assertThat(codes.add(unit.code())).as(unit.code()).isTrue();
            assertThat(Unit.byCode(unit.code())).contains(unit);
        }
        assertThat(Unit.byCode("furlong")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(QuantityKind.class)
    void everyKindHasABaseUnit(QuantityKind kind) {
        assertThat(kind.baseUnit().kind()).isEqualTo(kind);
        assertThat(Arrays.stream(Unit.values()).filter(unit -> unit.kind() == kind))
                .contains(kind.baseUnit());
        assertThat(kind.baseUnit().toBase(2.5)).isEqualTo(2.5);
    }

    @Test
    void aUnitOfAnotherKindIsRefused() {
        assertThatThrownBy(() -> org.riseandgel.core.quantity.Mass.ofGrams(1).in(Unit.MILLILITRE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("mL is a unit of volume, but this is a mass");
    }
}
