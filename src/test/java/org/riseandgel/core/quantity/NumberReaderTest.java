package org.riseandgel.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberReaderTest {
    private static final NumberReader POINT = NumberReader.of(DecimalMark.POINT);
    private static final NumberReader COMMA = NumberReader.of(DecimalMark.COMMA);

    static List<TypedNumbers> typed() {
        return TypedNumbers.all();
    }

    @ParameterizedTest
    @MethodSource("typed")
    void readsEveryLineOfTheList(TypedNumbers line) {
        Reading reading = line.read();

        assertThat(reading.outcome().name()).as(reading.message()).isEqualTo(line.outcome());
        assertThat(reading.typed()).isEqualTo(line.text());
        assertThat(reading.typedUnit().map(Unit::code).orElse("")).isEqualTo(line.unit());
        if (reading.ok()) {
            assertThat(reading.value()).isEqualTo(line.expected());
            assertThat(reading.figures()).hasToString(line.figures());
            assertThat(reading.message()).isEmpty();
        } else {
            assertThat(reading.value()).isNull();
            assertThat(reading.message()).endsWith(reading.message().endsWith("?") ? "?" : ".");
            assertThat(reading.message()).doesNotContain("{", "}");
        }
    }

    @ParameterizedTest
    @MethodSource("typed")
    void echoIsReadAsTheSameNumber(TypedNumbers line) {
        Reading reading = line.read();
        for (DecimalMark mark : DecimalMark.values()) {
            String echo = reading.echo(mark);
            assertThat(echo.isEmpty()).isEqualTo(!reading.ok());
            if (reading.ok() && echo.codePointCount(0, echo.length()) <= 64) {
                Reading again = NumberReader.of(mark).read(echo.replaceFirst(" \\(.*", ""));
                assertThat(again.value()).as(echo).isEqualTo(reading.value());
                Unit unit = reading.unit() == Unit.ONE ? null : reading.unit();
                assertThat(again.unit()).as(echo).isEqualTo(unit);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("typed")
    void choicesAreReadAsJustThat(TypedNumbers line) {
        Reading reading = line.read();
        assertThat(reading.choices().isEmpty()).isEqualTo(reading.outcome() != ReadingOutcome.AMBIGUOUS);
        List<Reading> chosen = reading.choices().stream()
                .map(NumberReader.of(line.home())::read)
                .toList();
        assertThat(chosen).allMatch(Reading::ok);
        assertThat(chosen.stream().map(TypedNumbers::told)).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("typed")
    void outerSpacesChangeNothing(TypedNumbers line) {
        String wrapped = "\u200B\n " + line.text() + "\u00A0\t\uFEFF";
        if (wrapped.length() <= 64) {
            Reading reading = NumberReader.of(line.home()).read(wrapped);
            assertThat(TypedNumbers.told(reading)).isEqualTo(TypedNumbers.told(line.read()));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG", "hi-IN", "th-TH-u-nu-thai", "fa-IR"})
    void everyLineReadsTheSameUnderEveryLocale(String tag) {
        List<String> before =
                typed().stream().map(NumberReaderTest::toldWithEcho).toList();
        Locale usual = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(typed().stream().map(NumberReaderTest::toldWithEcho)).isEqualTo(before);
        } finally {
            Locale.setDefault(usual);
        }
    }

    private static String toldWithEcho(TypedNumbers line) {
        Reading reading = line.read();
        return TypedNumbers.told(reading) + reading.echo(DecimalMark.COMMA);
    }

    @Test
    void nothingTypedAtAllIsEmpty() {
        assertThat(POINT.read(null).outcome()).isEqualTo(ReadingOutcome.EMPTY);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "POINT|1,234|1.234|1234",
                "COMMA|1.234|1,234|1234",
                "POINT|-1,234 kg|-1.234 kg|-1234 kg",
                "POINT|12 Mg|12 mg|12000 kg",
                "POINT|12 ML|12 mL|12000000 L",
                "POINT|1.5 gal|1.5 US gal|1.5 imp gal",
                "COMMA|1,5 gal|1,5 US gal|1,5 imp gal",
                "POINT|1/3 gal|1/3 US gal|1/3 imp gal",
                "POINT|2 cups|2 US cup|500 mL",
                "POINT|20°|20 °C|20 °F"
            })
    void asksWhichOfTwoMeaningsWasMeant(DecimalMark home, String typed, String one, String other) {
        Reading reading = NumberReader.of(home).read(typed);
        assertThat(reading.choices()).containsExactly(one, other);
        assertThat(reading.message()).contains(one, other);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "12..5|“12..5” has two decimal marks in a row. Write it like 12,5.",
                "12,|“12,” has a comma with no digit after it. Write it like 12,5.",
                "twelve|“twelve” does not start with a number. Write it in digits, like 12,5.",
                "12-13|“12-13” looks like a range. Write one number, like 12,5.",
                "3-|“3-” has its sign at the end. Write it in front, like -12,5.",
                "12 KG|“KG” is not a unit we know. Did you mean “kg”?",
                "12 furlongs|“furlongs” is not a unit we know. Write one like g, mL, cm or min.",
                "3/0|“3/0” divides by zero. Write a fraction like 1/2.",
                "2' 13\"|In “2' 13\"” there are 12 inches or more after the feet. Write it like 2' 3\".",
                "``|Nothing is written here yet. Write a number, like 12,5."
            })
    void saysWhatIsWrongAndHowToWriteItInTheHomeMark(String typed, String message) {
        assertThat(COMMA.read(typed).message()).isEqualTo(message);
    }

    @Test
    void aMessageNeverCarriesInvisibleCharacters() {
        assertThat(POINT.read("\u202E12").message())
                .isEqualTo("There is an invisible character in the number. Type it again by hand, like 12.5.");
    }

    @Test
    void aTextThatLooksLikeAPlaceholderIsQuotedAsItIs() {
        assertThat(COMMA.read("{mark}").message()).startsWith("“{mark}” does not");
    }

    /** 1 in is 25.4 mm, 1 oz is 28.349523125 g, 1 lb/ft³ is 16.018463373960138 kg/m³ (NIST SP 811). */
    @Test
    void echoShowsTheMetricEquivalent() {
        Map<String, String> echoes = Map.of(
                "1 1/2\"", "1 1/2 in (38.1 mm)",
                "68F", "68 °F (20 °C)",
                "4 oz", "4 oz (about 113.398 g)",
                "7.5 pcf", "7.5 lb/ft³ (about 120.138 kg/m³)",
                "2' 3\"", "27 in (685.8 mm)",
                "1/3", "1/3 (about 0.333333)",
                "11/2", "5 1/2 (5.5)",
                "1.2 x 10^4 g", "12\u202F000 g",
                "1234.50", "1234.5",
                "-1/2 kg", "−1/2 kg (−0.5 kg)");
        echoes.forEach((typed, echo) -> assertThat(POINT.read(typed).echo(DecimalMark.POINT))
                .isEqualTo(echo.replaceAll("(?<=\\d) (?=[a-z°])", "\u00A0")));
    }

    @Test
    void echoUsesTheMarkAskedFor() {
        assertThat(POINT.read("1 1/2\"").echo(DecimalMark.COMMA)).isEqualTo("1 1/2\u00A0in (38,1\u00A0mm)");
    }

    @Test
    void everyUnitIsReadBackFromItsSymbolAndItsCode() {
        for (Unit unit : Unit.values()) {
            if (unit.kind() != QuantityKind.TEMPERATURE_DIFFERENCE
                    && !unit.symbol().isEmpty()) {
                assertThat(POINT.read("12 " + unit.symbol()).unit()).isEqualTo(unit);
                assertThat(POINT.read("12 " + unit.code()).unit()).isEqualTo(unit);
            }
        }
    }

    /** A slash before a letter belongs to the unit, one before a digit to a fraction. */
    @ParameterizedTest
    @CsvSource({
        "6 per hour, PER_HOUR",
        "6/h, PER_HOUR",
        "6 / h, PER_HOUR",
        "6 ACH, PER_HOUR",
        "6 air changes per hour, PER_HOUR",
        "6 cfm, CUBIC_FOOT_PER_MINUTE",
        "6 m³/h, CUBIC_METRE_PER_HOUR",
        "6 m3 / h, CUBIC_METRE_PER_HOUR",
        "6 L/min, LITRE_PER_MINUTE",
        "6 Wh, WATT_HOUR",
        "6 mmol, MILLIMOLE"
    })
    void ratesFlowsAndEnergiesAreRead(String typed, Unit unit) {
        Reading reading = POINT.read(typed);
        assertThat(reading.unit()).as(reading.message()).isEqualTo(unit);
        assertThat(reading.value()).isEqualTo(Rational.of(6));
    }

    @Test
    void aFractionOfARateIsReadAsSuch() {
        assertThat(POINT.read("1 1/2 /h").value()).isEqualTo(Rational.of(3, 2));
        assertThat(POINT.read("1 1/2 per hour").value()).isEqualTo(Rational.of(3, 2));
        assertThat(POINT.read("6/x").outcome()).isEqualTo(ReadingOutcome.MALFORMED);
    }

    @Test
    void randomTextsAreReadWithoutAnyException() {
        String signs = "0123456789012345678901234567890123456789.,.,.,''' //-+eExX×^*·½¾²³⁻gkmlLcinftozb\"′″°%:_()"
                + "\u00A0\u2009\u202F\u200B\u202E\u0000١１℃µé克\uD83D\uDE00";
        Random random = new Random(20250607);
        for (int round = 0; round < 200_000; round++) {
            StringBuilder text = new StringBuilder();
            int length = random.nextInt(24) + (round % 10 == 0 ? random.nextInt(45) : 0);
            for (int at = 0; at < length; at++) {
                text.append(signs.charAt(random.nextInt(signs.length())));
            }
            holdsItsPromises(text.toString());
        }
    }

    @Test
    void hostileTextsAreReadWithoutAnyException() {
        List<String> hostile = new ArrayList<>(List.of(
                "1e999999999",
                "1e-999999999",
                "1e" + "9".repeat(62),
                "9".repeat(30) + "e30",
                "1/" + "9".repeat(62),
                "9".repeat(31) + "/" + "9".repeat(32),
                "1,".repeat(32),
                "1 ".repeat(32),
                "1'".repeat(32),
                "-".repeat(64),
                "½".repeat(64),
                "1" + " ".repeat(62) + "g",
                "1" + "^".repeat(63),
                "1" + "g/".repeat(31),
                "10" + "⁹".repeat(62),
                "\uD800".repeat(64),
                "9".repeat(1_000_000),
                "1" + "0".repeat(29) + "e-30",
                "0." + "0".repeat(62),
                "{typed}{mark}"));
        hostile.forEach(NumberReaderTest::holdsItsPromises);
        assertThat(POINT.read("9".repeat(1_000_000)).outcome()).isEqualTo(ReadingOutcome.TOO_LONG);
    }

    private static void holdsItsPromises(String text) {
        for (NumberReader reader : List.of(POINT, COMMA)) {
            Reading reading = reader.read(text);
            assertThat(reading.typed()).isEqualTo(text);
            assertThat(reading.message().length()).isLessThan(400);
            if (reading.ok()) {
                assertThat(reading.value().abs()).isLessThanOrEqualTo(Rational.of(1_000_000_000_000L));
                assertThat(reading.value().denominator().bitLength()).isLessThan(250);
                assertThat(reading.echo(DecimalMark.POINT)).isNotEmpty();
            }
        }
    }
}
