package org.riseandgel.exercise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberReader;
import org.riseandgel.core.quantity.Rational;

class GraderTest {
    /** 8 oz: 226.796185 g by the definition of the ounce, within 0.5 %, that is 1.133980925 g. */
    private static final DrawnNumbers EIGHT_OUNCES = drawWhere(Samples.CARD, "amount", "8.0");

    /**
     * 90 mm wide, 300 mL, twice the liquid: 600 mL over 63.617251 cm² is 94.313960 mm, within 1 mm. One diameter for one
     * radius makes a quarter of it, a radius for a diameter four times as much, and a gain of two one and a half times.
     */
    private static final DrawnNumbers BEAKER = Samples.draw(Samples.BEAKER, 1);

    @ParameterizedTest
    @CsvSource({
        "226.796185 g, RIGHT, ",
        "226.8 g, RIGHT, ",
        "0.226796185 kg, RIGHT, ",
        "226796.185 mg, RIGHT, ",
        "8 oz, RIGHT, ",
        "1/2 lb, RIGHT, ",
        "227.930165925 g, RIGHT, ",
        "227.930165926 g, WRONG, ",
        "225.662204075 g, RIGHT, ",
        "225.662204074 g, WRONG, ",
        "226.8 kg, WRONG_UNIT, The number is right in g; you wrote kg.",
        "226.8 oz, WRONG_UNIT, The number is right in g; you wrote oz.",
        "0.2268 g, WRONG_UNIT, The number would be right in kg; you wrote g.",
        "0.5 g, WRONG_UNIT, The number would be right in lb; you wrote g.",
        "8 g, SLIP, 'One ounce is 28.35 g, not 1 g.'",
        "0.008 kg, SLIP, 'One ounce is 28.35 g, not 1 g.'",
        "0.28219 g, SLIP, 'Multiplied where the factor divides, or divided where it multiplies.'",
        "2268 g, POWER_OF_TEN, 'The digits are right, but the decimal mark has moved. Yours is 10 times too large.'",
        "22.68 g, POWER_OF_TEN, 'The digits are right, but the decimal mark has moved. Yours is 10 times too small.'",
        "2.268 g, POWER_OF_TEN, 'The digits are right, but the decimal mark has moved. Yours is 100 times too small.'",
        "22680 g, POWER_OF_TEN, 'The digits are right, but the decimal mark has moved. Yours is 100 times too large.'",
        "-226.8 g, WRONG, ",
        "0 g, WRONG, ",
        "500 g, WRONG, ",
    })
    void judgesEightOunces(String typed, Verdict verdict, String line) {
        Graded graded = Grader.grade(EIGHT_OUNCES, 0, Samples.read(typed));
        assertThat(graded.verdict()).isEqualTo(verdict);
        assertThat(graded.line()).isEqualTo(line == null ? "" : line);
    }

    @ParameterizedTest
    @CsvSource({
        "94.3 mm, RIGHT, ",
        "9.43 cm, RIGHT, ",
        "94 mm, RIGHT, ",
        "3.713 in, RIGHT, ",
        "3 23/32 in, RIGHT, ",
        "23.6 mm, SLIP, diameter-for-radius",
        "141.5 mm, SLIP, gain-for-ratio",
        "943 mm, POWER_OF_TEN, power-of-ten",
        "9.43 mm, WRONG_UNIT, ",
        "94.3 cm, WRONG_UNIT, ",
        "3.713 mm, WRONG_UNIT, ",
        "100 mm, WRONG, ",
    })
    void judgesABeaker(String typed, Verdict verdict, String slip) {
        Graded graded = Grader.grade(BEAKER, 0, Samples.read(typed));
        assertThat(graded.verdict()).isEqualTo(verdict);
        assertThat(graded.slip().map(Slip::id)).isEqualTo(Optional.ofNullable(slip));
    }

    @Test
    void temperaturesShiftWithTheirZero() {
        DrawnNumbers oven = drawWhere(Samples.OVEN, "dial", "104");
        assertThat(verdict(oven, "40 °C"))
                .as("104 °F by the definition of the scale")
                .isEqualTo(Verdict.RIGHT);
        assertThat(verdict(oven, "104 °F")).isEqualTo(Verdict.RIGHT);
        assertThat(verdict(oven, "40.5 °C")).as("on the edge").isEqualTo(Verdict.RIGHT);
        assertThat(verdict(oven, "40.51 °C")).isEqualTo(Verdict.WRONG);
        assertThat(verdict(oven, "40 °F")).isEqualTo(Verdict.WRONG_UNIT);
        assertThat(Grader.grade(oven, 0, Samples.read("57.8 °C")).slip()).contains(Slip.SCALE_WITHOUT_OFFSET);
    }

    @Test
    void tellsEarlyRoundingFromOtherErrors() {
        DrawnNumbers drawn = withEarlyRounding();
        DrawnPart part = drawn.part(0);
        Rational early = part.part()
                .unit()
                .fromBase(part.roundedEarly().orElseThrow().band().centre());
        Graded graded = Grader.grade(drawn, 0, Samples.read(early.toDecimal(6).toPlainString() + " mm"));
        assertThat(graded.verdict()).isEqualTo(Verdict.ROUNDED_EARLY);
        assertThat(graded.slip()).contains(Slip.ROUNDED_EARLY);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "94.3    | Write the unit too. This needs a length with its unit, such as 12\u00a0mm.",
                "94.3 g  | This needs a length with its unit, such as 12\u00a0mm; you wrote g.",
                "94.3 °C | This needs a length with its unit, such as 12\u00a0mm; you wrote °C.",
                "94.3 %  | This needs a length with its unit, such as 12\u00a0mm; you wrote %.",
            })
    void asksAgainForAUnit(String typed, String question) {
        assertThat(Grader.check(BEAKER, 0, Samples.read(typed))).contains(question);
    }

    @Test
    void asksAgainForAUnitWhereThereIsNone() {
        DrawnNumbers cup = Samples.draw(Samples.CUP, 1);
        assertThat(Grader.check(cup, 1, Samples.read("3.1"))).isEmpty();
        assertThat(Grader.check(cup, 1, Samples.read("3.1 x"))).isEmpty();
        assertThat(Grader.check(cup, 1, Samples.read("3.1 g")))
                .contains("This needs a plain number, such as 3; you wrote g.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "12..5 mm", "1e999999999 mm", "12 ML", "12 furlongs", "NaN mm", "12-13 mm"})
    void asksAgainInTheReadersWordsForWhatCannotBeRead(String typed) {
        assertThat(Grader.check(BEAKER, 0, Samples.read(typed)))
                .contains(Samples.read(typed).message());
        assertThatThrownBy(() -> Grader.grade(BEAKER, 0, Samples.read(typed)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Asking again must not tell how near an answer is: the right number and a far one get the same words. */
    @Test
    void askingAgainTellsNothing() {
        assertThat(Grader.check(BEAKER, 0, Samples.read("94.313960")))
                .isEqualTo(Grader.check(BEAKER, 0, Samples.read("7")));
        assertThat(Grader.check(BEAKER, 0, Samples.read("94.313960 g")))
                .isEqualTo(Grader.check(BEAKER, 0, Samples.read("7 g")));
    }

    @Property
    void nearerIsNeverWorse(@ForAll @IntRange(max = 400_000) int near, @ForAll @IntRange(max = 400_000) int further) {
        int small = Math.min(near, further);
        int large = Math.max(near, further);
        for (int sign : new int[] {-1, 1}) {
            if (isRight(BEAKER, sign * large)) {
                assertThat(isRight(BEAKER, sign * small)).isTrue();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG", "hi-IN"})
    void theMachinesLanguageChangesNoVerdict(String language) {
        Locale before = Locale.getDefault();
        Graded here = Grader.grade(BEAKER, 0, NumberReader.of(DecimalMark.COMMA).read("23,6 mm"));
        try {
            Locale.setDefault(Locale.forLanguageTag(language));
            Graded there = Grader.grade(
                    Samples.draw(Samples.BEAKER, 1),
                    0,
                    NumberReader.of(DecimalMark.COMMA).read("23,6 mm"));
            assertThat(there).isEqualTo(here);
        } finally {
            Locale.setDefault(before);
        }
    }

    /** Text, seed and what was typed say everything: rebuilt from these, the verdict is the same to the last digit. */
    @Test
    void aStoredAnswerIsJudgedAlikeWhenRebuilt() {
        NumericTemplate template = Samples.template(Samples.JOB);
        DrawnNumbers drawn = Samples.LIBRARY.drawer().draw(template, 99);
        NumericTemplate stored = (NumericTemplate)
                Samples.LIBRARY.parse(template.file().path(), template.file().text());
        DrawnNumbers rebuilt = Samples.LIBRARY.drawer().again(stored, drawn.seed());
        assertThat(Grader.grade(rebuilt, 0, Samples.read("250 mL")))
                .isEqualTo(Grader.grade(drawn, 0, Samples.read("250 mL")));
    }

    private static boolean isRight(DrawnNumbers drawn, int micrometres) {
        Rational number = drawn.part(0).expected().plus(Rational.of(micrometres, 1_000));
        return verdict(drawn, number.toDecimal(15).toPlainString() + " mm") == Verdict.RIGHT;
    }

    private static Verdict verdict(DrawnNumbers drawn, String typed) {
        return Grader.grade(drawn, 0, Samples.read(typed)).verdict();
    }

    private static DrawnNumbers drawWhere(String sample, String name, String number) {
        for (long seed = 0; seed < 5_000; seed++) {
            DrawnNumbers drawn = Samples.draw(sample, seed);
            if (drawn.values().get(name).number().toPlainString().equals(number)) {
                return drawn;
            }
        }
        throw new AssertionError("no draw with " + name + " " + number);
    }

    /** A draw in which rounding early leads out of the tolerance. */
    private static DrawnNumbers withEarlyRounding() {
        for (long seed = 0; seed < 5_000; seed++) {
            DrawnNumbers drawn = Samples.draw(Samples.BEAKER, seed);
            DrawnPart part = drawn.part(0);
            boolean far = part.roundedEarly()
                    .filter(early -> !part.right().contains(early.band().centre()))
                    .isPresent();
            if (far) {
                return drawn;
            }
        }
        throw new AssertionError("rounding early never matters");
    }
}
