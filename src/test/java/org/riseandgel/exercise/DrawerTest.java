package org.riseandgel.exercise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.core.quantity.DecimalMark;

class DrawerTest {
    /** Worked out by a second program written from the description of the drawing rules; frozen for ever. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 | diameter 90, charge 300, ratio 2, depth 300",
                "2 | diameter 100, charge 250, ratio 2, depth 300",
                "26 | diameter 95, charge 250, ratio 2, depth 300", // the third try
                "42 | diameter 105, charge 300, ratio 2, depth 300",
                "-1 | diameter 80, charge 200, ratio 3, depth 300",
                "9223372036854775807 | diameter 120, charge 300, ratio 4, depth 300"
            })
    void aSeedGivesItsNumbersForEver(long seed, String numbers) {
        assertThat(numbers(Samples.draw(Samples.BEAKER, seed))).isEqualTo(numbers);
    }

    @Test
    void theVersionIsTheTextsOwn() {
        NumericTemplate beaker = Samples.template(Samples.BEAKER);
        // sha256sum straight-beaker.yaml | cut -c1-16
        assertThat(beaker.version()).isEqualTo("94fccfc971800c78");
        NumericTemplate again = (NumericTemplate)
                Samples.LIBRARY.parse(beaker.file().path(), beaker.file().text());
        assertThat(again.version()).isEqualTo(beaker.version());
        String changed = beaker.file().text().replace("You pour", "You  pour");
        assertThat(Samples.LIBRARY.parse(beaker.file().path(), changed).version())
                .isNotEqualTo(beaker.version());
    }

    @Test
    void aStoredVersionOutlivesItsSkill() {
        SourceFile file = Samples.file(Samples.BEAKER);
        String gone = file.text().replace("skill: sticks", "skill: gone");
        assertThat(Samples.LIBRARY
                        .parse("exercises/gone/straight-beaker.yaml", gone)
                        .skill())
                .isEqualTo("gone");
    }

    @ParameterizedTest
    @MethodSource("org.riseandgel.exercise.Samples#ids")
    void theSeedOfADrawGivesTheSameDrawAtOnce(String id) {
        NumericTemplate template = Samples.template("/" + id);
        for (long seed = 0; seed < 200; seed++) {
            DrawnNumbers drawn = Samples.LIBRARY.drawer().draw(template, seed);
            DrawnNumbers again = Samples.LIBRARY.drawer().again(template, drawn.seed());
            assertThat(again.values()).isEqualTo(drawn.values());
            assertThat(again.parts()).isEqualTo(drawn.parts());
            assertThat(Samples.LIBRARY.drawer().draw(template, drawn.seed()).seed())
                    .isEqualTo(drawn.seed());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG", "hi-IN"})
    void theMachinesLanguageChangesNothing(String language) {
        Locale before = Locale.getDefault();
        DrawnNumbers here = Samples.draw(Samples.JOB, 7);
        String told = here.story(DecimalMark.COMMA) + here.prompt(1, DecimalMark.COMMA);
        try {
            Locale.setDefault(Locale.forLanguageTag(language));
            DrawnNumbers there = Samples.draw(Samples.JOB, 7);
            assertThat(there.values()).isEqualTo(here.values());
            assertThat(there.story(DecimalMark.COMMA) + there.prompt(1, DecimalMark.COMMA))
                    .isEqualTo(told);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void everyValueOfTheGridComesUp() {
        List<DrawRule> rules = Samples.template(Samples.CARD).draws();
        List<String> seen = new ArrayList<>();
        for (long seed = 0; seed < 2_000; seed++) {
            seen.add(Drawer.values(Samples.template(Samples.CARD), seed)
                    .get("amount")
                    .number()
                    .toPlainString());
        }
        assertThat(seen.stream().distinct()).hasSize(rules.get(0).count());
        assertThat(seen).contains("2.5", "13.5").doesNotContain("2.0", "14.0");
    }

    @Test
    void storyAndPromptShowTheNumbersInTheSchoolsMark() {
        DrawnNumbers drawn = Samples.draw(Samples.JOB, 3);
        String ratio = drawn.values().get("ratio").number().toPlainString();
        assertThat(drawn.prompt(1, DecimalMark.POINT)).contains("mark for " + ratio + " times");
        assertThat(drawn.prompt(1, DecimalMark.COMMA)).contains("mark for " + ratio.replace('.', ',') + " times");
        assertThat(drawn.story(DecimalMark.POINT)).contains("\u00a0mL of foam").doesNotContain("{");
    }

    /** 1.215 kg is 1215 g: on scales that read to 10 g, half way between 1210 and 1220. */
    @Test
    void noAnswerLiesHalfWayBetweenTwoReadings() {
        String text = Samples.file(Samples.CARD)
                .text()
                .replace("from: 2.5, to: 13.5, step: 0.5, unit: oz", "from: 1.21, to: 1.39, step: 0.005, unit: kg")
                .replace("percent: 0.5", "abs: 10")
                .replace("readability: 0.1", "readability: 10")
                .replace("slips: [converted-backwards, ounces-for-grams]\n", "");
        NumericTemplate template = (NumericTemplate) Samples.LIBRARY.parse("exercises/weighing/old-card.yaml", text);
        List<String> numbers = new ArrayList<>();
        for (long seed = 0; seed < 300; seed++) {
            numbers.add(Samples.LIBRARY
                    .drawer()
                    .draw(template, seed)
                    .values()
                    .get("amount")
                    .number()
                    .toPlainString());
        }
        assertThat(numbers).contains("1.210", "1.390").noneMatch(number -> number.endsWith("5"));
    }

    @Test
    void saysWhyNothingCouldBeDrawn() {
        String text = Samples.file(Samples.BEAKER).text().replace("atMost: 260", "atMost: 3");
        NumericTemplate template =
                (NumericTemplate) Samples.LIBRARY.parse("exercises/sticks/straight-beaker.yaml", text);
        assertThatThrownBy(() -> Samples.LIBRARY.drawer().draw(template, 1))
                .isInstanceOf(UndrawableException.class)
                .hasMessageStartingWith("No draw passed in 500 tries. ")
                .hasMessageContaining("stick.markHeight is above its condition");
    }

    @Test
    void aDrawDoesNotTellItsSecretsToALog() {
        DrawnNumbers drawn = Samples.draw(Samples.BEAKER, 1);
        assertThat(drawn)
                .hasToString("a draw of straight-beaker@" + drawn.template().version());
        assertThat(drawn.parts().get(0)).hasToString("part mark");
    }

    private static String numbers(DrawnNumbers drawn) {
        return drawn.values().values().stream()
                .map(value -> value.name() + " " + value.number().toPlainString())
                .collect(Collectors.joining(", "));
    }
}
