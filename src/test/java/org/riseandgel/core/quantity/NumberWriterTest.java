package org.riseandgel.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected texts follow from rounding by hand, ties away from zero. */
class NumberWriterTest {
    private static final NumberWriter POINT = NumberWriter.of(DecimalMark.POINT);
    private static final NumberWriter COMMA = NumberWriter.of(DecimalMark.COMMA);

    @ParameterizedTest
    @CsvSource({
        "1.005, 2, 1.01",
        "-1.005, 2, −1.01",
        "-0.001, 2, 0.00",
        "2.5, 0, 3",
        "9999, 0, 9999",
        "9999.5, 0, 10~000",
        "12345.678, 1, 12~345.7",
        "-1234567, 0, −1~234~567",
        "1234567890, 0, 1~234~567~890",
        "100000.5, 2, 100~000.50"
    })
    void writesFixedPlaces(double value, int places, String text) {
        assertThat(POINT.plain(value, places)).isEqualTo(text.replace('~', '\u202F'));
        assertThat(POINT.plain(Rational.ofPrinted(value), places)).isEqualTo(text.replace('~', '\u202F'));
        assertThat(COMMA.plain(value, places))
                .isEqualTo(text.replace('~', '\u202F').replace('.', ','));
    }

    @ParameterizedTest
    @CsvSource({
        "12.34, 0.05, 12.35",
        "12.325, 0.05, 12.35",
        "12.32, 0.05, 12.30",
        "12.5, 1, 13",
        "12, 0.1, 12.0",
        "17, 5, 15",
        "17.5, 5, 20",
        "-12.34, 0.05, −12.35",
        "0.3, 0.1, 0.3",
        "147, 10, 150"
    })
    void writesToAReadability(double value, double readability, String text) {
        assertThat(POINT.toReadability(value, readability)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0.001234, 3, 0.00123",
        "0.000001, 2, 0.0000010",
        "1234567, 3, 1~230~000",
        "12, 4, 12.00",
        "99.96, 3, 100",
        "0, 3, 0.00",
        "-45.678, 3, −45.7",
        "1e12, 2, 1~000~000~000~000"
    })
    void writesSignificantFiguresWithoutAPowerOfTen(double value, int figures, String text) {
        assertThat(POINT.figures(value, figures)).isEqualTo(text.replace('~', '\u202F'));
    }

    @Test
    void writesAPowerOfTenBeyondSixPlacesAndBeyondTenToTheTwelve() {
        assertThat(POINT.figures(1.234e-7, 3)).isEqualTo("1.23\u00A0×\u00A010⁻⁷");
        assertThat(COMMA.figures(6.022e23, 2)).isEqualTo("6,0\u00A0×\u00A010²³");
        assertThat(POINT.figures(9.996e-7, 3)).isEqualTo("0.00000100");
    }

    @Test
    void writesTheUnitAfterANoBreakSpace() {
        assertThat(POINT.with(Mass.ofGrams(12.34), Unit.GRAM, 0.5)).isEqualTo("12.5\u00A0g");
        assertThat(COMMA.with(Temperature.ofFahrenheit(110), Unit.DEGREE_CELSIUS, 0.1))
                .isEqualTo("43,3\u00A0°C");
        assertThat(POINT.with(Concentration.ofPercent(25), Unit.PERCENT, 1)).isEqualTo("25\u00A0%");
        assertThat(POINT.with(Ratio.of(4.04), Unit.ONE, 0.1)).isEqualTo("4.0");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNoNumber(double value) {
        assertThatThrownBy(() -> POINT.plain(value, 2)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> POINT.figures(value, 2)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> POINT.toReadability(value, 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> POINT.toReadability(1, value)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Rounding.toSignificant(value, 2)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void refusesPlacesFiguresAndStepsThatMakeNoSense() {
        assertThatThrownBy(() -> POINT.plain(1, -1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> POINT.figures(1, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> POINT.toReadability(1, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Rounding.toReadability(Rational.ONE, Rational.ZERO))
                .isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @CsvSource({"1.005, 3, 1.01", "123456, 2, 120000", "-0.00125, 2, -0.0013", "0, 3, 0", "9.995, 3, 10"})
    void roundsToSignificantFigures(double value, int figures, double rounded) {
        assertThat(Rounding.toSignificant(value, figures)).isEqualTo(rounded);
    }

    @ParameterizedTest
    @CsvSource({"2.5, 1, 3", "-2.5, 1, -3", "12.34, 0.05, 12.35", "7, 5, 5"})
    void roundsToAReadability(String value, String readability, String rounded) {
        assertThat(Rounding.toReadability(Rational.of(value), Rational.of(readability)))
                .isEqualTo(Rational.of(rounded));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG", "hi-IN"})
    void writesTheSameUnderEveryLocale(String tag) {
        Locale usual = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(POINT.plain(12345.678, 2)).isEqualTo("12\u202F345.68");
            assertThat(POINT.figures(1.5e-9, 2)).isEqualTo("1.5\u00A0×\u00A010⁻⁹");
        } finally {
            Locale.setDefault(usual);
        }
    }
}
