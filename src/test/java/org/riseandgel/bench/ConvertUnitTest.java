package org.riseandgel.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.QuantityKind;
import org.riseandgel.core.quantity.Unit;

class ConvertUnitTest {
    private final Catalogue catalogue = Catalogue.standard();
    private final ConvertUnit convert = new ConvertUnit();

    /** Factors exact by definition (NIST SP 811); temperatures by their defining points. */
    @ParameterizedTest
    @CsvSource({
        "4, oz, g, 113.3980925",
        "1, lb, oz, 16",
        "1.5, in, mm, 38.1",
        "1, US gal, US qt, 4",
        "1, lb/ft3, kg/m3, 16.018463373960138",
        "110, degF, Cel, 43.333333333333336",
        "32, degF, Cel, 0",
        "100, Cel, degF, 212",
        "20, Cel, K, 293.15",
        "68, degF, K, 293.15",
        "273.15, K, degF, 32",
        "500, g, kg, 0.5"
    })
    void knownConversions(double number, String from, String to, double expected) {
        assertThat(converted(number, from, to).results().get("converted").in(unit(to)))
                .isCloseTo(expected, within(1e-9));
    }

    /** Every unit there and back. */
    @Property
    void thereAndBack(
            @ForAll Unit from, @ForAll Unit to, @ForAll @Scale(4) @DoubleRange(min = 0.5, max = 100) double number) {
        if (from.kind() != to.kind() || from.kind() == QuantityKind.TEMPERATURE_DIFFERENCE || from == Unit.ONE) {
            return;
        }
        double there = converted(number, from.code(), to.code())
                .results()
                .get("converted")
                .in(to);
        assertThat(Quantity.of(there, to).in(from)).isCloseTo(number, Percentage.withPercentage(1e-8));
    }

    @Test
    void slipsByHand() {
        Outcome ounces = converted(4, "oz", "g");
        assertThat(Slips.of(ounces, Slip.OUNCES_FOR_GRAMS, "converted").inBase())
                .isCloseTo(4, within(1e-12));
        assertThat(Slips.of(ounces, Slip.CONVERTED_BACKWARDS, "converted").inBase())
                .isCloseTo(4 / 28.349523125, within(1e-12));
        // one row off, 4 lb are 1814.36948 g and 2 oz are 56.69904625 g
        assertThat(Slips.of(ounces, Slip.FACTOR_OF_ANOTHER_UNIT, "converted").inBase())
                .isCloseTo(1814.36948, within(1e-9));
        assertThat(Slips.of(converted(2, "lb", "kg"), Slip.FACTOR_OF_ANOTHER_UNIT, "converted")
                        .inBase())
                .isCloseTo(56.69904625, within(1e-9));
        assertThat(converted(32, "oz", "lb").slips())
                .extracting(Outcome.SlipAnswer::slip)
                .doesNotContain(Slip.FACTOR_OF_ANOTHER_UNIT);
        // 10 in³ are 163.87064 mL, not 25.4 mL, and not 10 mL
        Outcome cubic = converted(10, "in3", "mL");
        assertThat(Slips.of(cubic, Slip.ONE_SIDE_FOR_CUBE, "converted").in(Unit.MILLILITRE))
                .isCloseTo(25.4, within(1e-9));
        assertThat(Slips.of(cubic, Slip.CUBIC_INCHES_FOR_MILLILITRES, "converted")
                        .in(Unit.MILLILITRE))
                .isCloseTo(10, within(1e-9));
        Outcome bake = converted(110, "degF", "Cel");
        assertThat(Slips.of(bake, Slip.SCALE_WITHOUT_OFFSET, "converted").inBase())
                .isCloseTo(61.111111111, within(1e-8));
        assertThat(Slips.of(bake, Slip.FAHRENHEIT_FOR_CELSIUS, "converted").inBase())
                .isEqualTo(110);
        assertThat(Slips.of(bake, Slip.OFFSET_AFTER_SCALE, "converted").inBase())
                .isCloseTo(29.111111111, within(1e-8));
        assertThat(Slips.of(bake, Slip.CONVERTED_BACKWARDS, "converted").inBase())
                .isCloseTo(230, within(1e-9));
        Outcome inches = converted(3, "in", "cm");
        assertThat(Slips.of(inches, Slip.INCHES_FOR_CENTIMETRES, "converted").in(Unit.CENTIMETRE))
                .isCloseTo(3, within(1e-12));
    }

    @Test
    void theResultIsShownInTheUnitThatWasAskedFor() {
        assertThat(converted(4, "oz", "kg").units()).containsEntry("converted", Unit.KILOGRAM);
    }

    @Test
    void gramsNeverBecomeMillilitres() {
        assertThatThrownBy(() -> converted(4, "oz", "mL"))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("oz measures mass, and mL measures volume: choose a unit of mass");
    }

    private Outcome converted(double number, String from, String to) {
        Given given = Given.defaultsOf(convert)
                .with("amount", Quantity.of(number, unit(from)), unit(from))
                .choosing("toUnit", to);
        return catalogue.run(convert, given);
    }

    private static Unit unit(String code) {
        return Unit.byCode(code).orElseThrow();
    }
}
