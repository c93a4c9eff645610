package org.riseandgel.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class QuantityTest {
    @Property
    void noQuantityTakesWhatIsNoNumber(@ForAll QuantityKind kind, @ForAll("noNumbers") double value) {
        assertThatThrownBy(() -> Quantity.ofBase(kind, value))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining(String.valueOf(value));
    }

    @Property
    void noUnitLetsPassWhatIsNoNumber(@ForAll Unit unit, @ForAll("noNumbers") double value) {
        assertThatThrownBy(() -> Quantity.of(value, unit)).isInstanceOf(OutOfRangeException.class);
    }

    @Property
    void onlyTemperaturesAndTheirDifferencesGoBelowZero(
            @ForAll QuantityKind kind, @ForAll @DoubleRange(min = -200, max = -1e-9) @Scale(9) double value) {
        boolean may = kind == QuantityKind.TEMPERATURE || kind == QuantityKind.TEMPERATURE_DIFFERENCE;
        if (may) {
            assertThat(Quantity.ofBase(kind, value).inBase()).isEqualTo(value);
        } else {
            assertThatThrownBy(() -> Quantity.ofBase(kind, value)).isInstanceOf(OutOfRangeException.class);
        }
    }

    @Property
    void aQuantityKeepsKindAndValueThroughItsUnit(
            @ForAll Unit unit, @ForAll @DoubleRange(min = 1e-3, max = 100) @Scale(9) double value) {
        Quantity quantity = Quantity.of(value, unit);
        assertThat(quantity.kind()).isEqualTo(unit.kind());
        // The base value has magnitude up to 300 K more than the value, hence 1e-12 of 300.
        assertThat(quantity.in(unit)).isCloseTo(value, within(1e-12 * (value + 600)));
    }

    @Property
    void moreOfAUnitIsMore(
            @ForAll Unit unit,
            @ForAll @DoubleRange(min = 1, max = 90) @Scale(9) double less,
            @ForAll @DoubleRange(min = 1, max = 90) @Scale(9) double more) {
        Assume.that(more - less > 1e-6);
        assertThat(Quantity.of(more, unit).inBase())
                .isGreaterThan(Quantity.of(less, unit).inBase());
    }

    @Provide
    Arbitrary<Double> noNumbers() {
        return Arbitraries.of(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e300, -1e300);
    }
}
