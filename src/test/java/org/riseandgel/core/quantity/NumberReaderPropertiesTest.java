package org.riseandgel.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

class NumberReaderPropertiesTest {
    @Property
    void fixedPlacesReadBackAsTheRoundedValue(
            @ForAll @BigRange(min = "-1000000000000", max = "1000000000000") @Scale(9) BigDecimal value,
            @ForAll @IntRange(max = 12) int places,
            @ForAll DecimalMark mark) {
        String written = NumberWriter.of(mark).plain(Rational.of(value), places);
        assertThat(read(written, mark).value())
                .as(written)
                .isEqualTo(Rational.of(value.setScale(places, RoundingMode.HALF_UP)));
    }

    @Property
    void significantFiguresReadBackWithThatManyFigures(
            @ForAll @DoubleRange(min = -1e11, max = 1e11) @Scale(12) double value,
            @ForAll @IntRange(min = 1, max = 12) int figures,
            @ForAll DecimalMark mark) {
        Reading reading = read(NumberWriter.of(mark).figures(value, figures), mark);
        assertThat(reading.value().toDouble()).isEqualTo(Rounding.toSignificant(value, figures));
        assertThat(reading.figures().allow(figures)).isTrue();
    }

    @Property
    void tinyValuesReadBackFromTheirPowerOfTen(
            @ForAll @DoubleRange(min = 1e-25, max = 1e-6) @Scale(30) double value, @ForAll DecimalMark mark) {
        String written = NumberWriter.of(mark).figures(value, 4);
        assertThat(read(written, mark).value().toDouble()).as(written).isEqualTo(Rounding.toSignificant(value, 4));
    }

    @Property
    void aReadabilityReadsBackAsAWholeNumberOfSteps(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) @Scale(12) double value,
            @ForAll("readabilities") double step,
            @ForAll DecimalMark mark) {
        Rational written =
                read(NumberWriter.of(mark).toReadability(value, step), mark).value();
        assertThat(written.dividedBy(Rational.ofPrinted(step)).denominator()).isEqualTo(BigInteger.ONE);
        assertThat(Math.abs(written.toDouble() - value)).isLessThanOrEqualTo(step / 2 * (1 + 1e-9));
    }

    @Property
    void quantitiesReadBackWithTheirUnit(
            @ForAll @DoubleRange(min = 0, max = 1e6) @Scale(12) double value,
            @ForAll("units") Unit unit,
            @ForAll DecimalMark mark) {
        Assume.that(unit.kind() != QuantityKind.DENSITY || value > 0);
        Assume.that(unit.kind() != QuantityKind.CONCENTRATION || value <= 100);
        Quantity quantity = Quantity.of(value, unit);
        Reading reading = read(NumberWriter.of(mark).with(quantity, unit, 0.01), mark);
        assertThat(reading.unit()).isEqualTo(unit);
        assertThat(reading.value())
                .isEqualTo(
                        Rounding.toReadability(Rational.of(Rounding.shortest(quantity.in(unit))), Rational.of("0.01")));
    }

    @Property
    void exactlyWrittenFractionsReadBack(
            @ForAll @IntRange(min = -100_000, max = 100_000) int above,
            @ForAll @IntRange(min = 1, max = 1_000_000) int below,
            @ForAll DecimalMark mark) {
        Rational value = Rational.of(above, below);
        assertThat(read(NumberWriter.of(mark).exact(value), mark).value()).isEqualTo(value);
        assertThat(read(NumberWriter.of(mark).mixed(value), mark).value()).isEqualTo(value);
    }

    @Property
    void swappingTheMarksChangesNothingWhereShapeSettlesIt(@ForAll("groupedOrDecimal") String text) {
        Reading reading = NumberReader.of(DecimalMark.POINT).read(text);
        Assume.that(reading.outcome() != ReadingOutcome.AMBIGUOUS && !text.matches("-?[1-9]\\d{0,2}[.,]\\d{3}"));
        Reading swapped = NumberReader.of(DecimalMark.POINT).read(swapped(text));
        assertThat(swapped.outcome()).isEqualTo(reading.outcome());
        assertThat(swapped.value()).isEqualTo(reading.value());
        assertThat(swapped.figures()).isEqualTo(reading.figures());
    }

    @Property
    void swappingMarksAndHomeMarkTogetherNeverChangesAnything(@ForAll("groupedOrDecimal") String text) {
        Reading point = NumberReader.of(DecimalMark.POINT).read(text);
        Reading comma = NumberReader.of(DecimalMark.COMMA).read(swapped(text));
        assertThat(comma.outcome()).isEqualTo(point.outcome());
        assertThat(comma.value()).isEqualTo(point.value());
    }

    @Property
    void valueAndUnitChangedTogetherAreTheSameAmount(
            @ForAll @BigRange(min = "0", max = "100000") @Scale(3) BigDecimal value, @ForAll("units") Unit unit) {
        Assume.that(unit != Unit.POUND_PER_CUBIC_FOOT);
        Unit base = unit.kind().baseUnit();
        String converted = NumberWriter.of(DecimalMark.POINT).exact(unit.toBase(Rational.of(value)));
        Reading one = read(value.toPlainString() + " " + unit.symbol(), DecimalMark.POINT);
        Assume.that(!converted.contains("× 10") && Rational.of(value).compareTo(Rational.ZERO) > 0);
        Reading other = read(converted + " " + base.symbol(), DecimalMark.POINT);
        assertThat(other.unit().toBase(other.value())).isEqualTo(one.unit().toBase(one.value()));
    }

    private static Reading read(String text, DecimalMark mark) {
        Reading reading = NumberReader.of(mark).read(text);
        assertThat(reading.ok()).as(text + ": " + reading.message()).isTrue();
        return reading;
    }

    private static String swapped(String text) {
        return text.replace('.', '\0').replace(',', '.').replace('\0', ',');
    }

    @Provide
    Arbitrary<Double> readabilities() {
        return Arbitraries.of(0.001, 0.002, 0.01, 0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0);
    }

    @Provide
    Arbitrary<Unit> units() {
        return Arbitraries.of(Unit.class)
                .filter(unit -> !unit.symbol().isEmpty() && unit.kind() != QuantityKind.TEMPERATURE_DIFFERENCE)
                .filter(unit -> unit != Unit.KELVIN);
    }

    @Provide
    Arbitrary<String> groupedOrDecimal() {
        Arbitrary<String> digits =
                Arbitraries.strings().numeric().ofMinLength(1).ofMaxLength(5);
        Arbitrary<String> tail = Combinators.combine(Arbitraries.of(".", ","), digits)
                .as(String::concat)
                .list()
                .ofMaxSize(3)
                .map(tails -> String.join("", tails));
        return Combinators.combine(Arbitraries.of("", "-"), digits, tail)
                .as((sign, first, rest) -> sign + first + rest);
    }
}
