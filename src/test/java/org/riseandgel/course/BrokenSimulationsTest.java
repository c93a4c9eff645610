package org.riseandgel.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.riseandgel.course.Simulation.Outcome;

/** Each mistake in {@code simulations.yaml} is reported once, at its line, with what would be right. */
class BrokenSimulationsTest {
    private static final String FILE = "lessons/simulations.yaml";
    private static final String SIMULATIONS =
            """
            simulations:
              - id: pour
                title: Pouring
                about: A cup of foam.
                skill: rising
                minutes: 4
                scenes:
                  - id: cup
                    title: The cup
                    text: A cup stands there.
                    seconds: 20
                    caution: { word: NOTICE, title: Slow, text: Pour slowly. }
                    choices:
                      - { text: Pour, outcome: safe, consequence: It is full., why: Slow., to: full }
                      - { text: Throw, outcome: harm, consequence: It flies., why: Fast., to: spilled }
                      - { text: Wait, outcome: slip, consequence: It sets., why: Late., to: cup }
                  - id: full
                    title: Full
                    text: The end.
                    ending: true
                  - id: spilled
                    title: Spilled
                    text: Begin again.
                    ending: true
            """;

    @Test
    void aSoundSimulationHasNoProblem() {
        ContentLoader.Loaded loaded =
                SampleCourse.sound().with(FILE, SIMULATIONS).load();
        assertThat(loaded.problems()).isEmpty();
        Simulation pour = loaded.content().simulation("pour").orElseThrow();
        assertThat(loaded.content().simulationsOf("rising")).containsExactly(pour);
        assertThat(pour.first().seconds()).isEqualTo(20);
        assertThat(pour.first().caution().word()).isEqualTo("NOTICE");
        assertThat(pour.first().choices())
                .extracting(Simulation.Choice::outcome)
                .containsExactlyInAnyOrder(Outcome.SAFE, Outcome.HARM, Outcome.SLIP);
        assertThat(pour.scene("full").orElseThrow().isEnding()).isTrue();
    }

    @Test
    void aCourseMayHaveNoSimulations() {
        assertThat(SampleCourse.sound().load().content().simulations()).isEmpty();
    }

    @Test
    void theOrderOfChoicesTellsNothingOfTheOrderInTheFile() {
        String swapped = SIMULATIONS
                .replace("text: Pour, outcome: safe, consequence: It is full., why: Slow., to: full", "A")
                .replace("text: Throw, outcome: harm, consequence: It flies., why: Fast., to: spilled", "B")
                .replace("{ A }", "{ text: Throw, outcome: harm, consequence: It flies., why: Fast., to: spilled }")
                .replace("{ B }", "{ text: Pour, outcome: safe, consequence: It is full., why: Slow., to: full }");
        assertThat(swapped).isNotEqualTo(SIMULATIONS);
        assertThat(choices(swapped)).isEqualTo(choices(SIMULATIONS));
    }

    private static List<Simulation.Choice> choices(String text) {
        return SampleCourse.sound()
                .with(FILE, text)
                .load()
                .content()
                .simulation("pour")
                .orElseThrow()
                .first()
                .choices();
    }

    static Stream<Arguments> mistakes() {
        return Stream.of(
                Arguments.of("id: pour", "id: Pour it", 2, "simulations[1].id", "small letters"),
                Arguments.of("skill: rising", "skill: risen", 5, "simulations[1].skill", "risen"),
                Arguments.of("minutes: 4", "minutes: soon", 6, "simulations[1].minutes", "whole number from 1 to 60"),
                Arguments.of("minutes: 4", "minutes: 4\n    colour: red", 7, "simulations[1].colour", "not known here"),
                Arguments.of("seconds: 20", "seconds: 2", 11, "simulations[1].scenes[1].seconds", "from 5 to 600"),
                Arguments.of(
                        "word: NOTICE",
                        "word: ATTENTION",
                        12,
                        "simulations[1].scenes[1].caution.word",
                        "one of DANGER"),
                Arguments.of(
                        "outcome: harm",
                        "outcome: bad",
                        15,
                        "simulations[1].scenes[1].choices[2].outcome",
                        "safe, slip or harm"),
                Arguments.of(
                        "outcome: safe", "outcome: slip", 13, "simulations[1].scenes[1].choices", "no choice with"),
                Arguments.of(
                        "to: cup }", "to: mug }", 13, "simulations[1].scenes[1].choices", "“mug”, which is no scene"),
                Arguments.of("to: spilled }", "to: full }", 21, "simulations[1].scenes[3].id", "no choice leads"),
                Arguments.of(
                        "text: Wait", "text: Pour", 16, "simulations[1].scenes[1].choices[3].text", "offered twice"),
                Arguments.of(
                        ", consequence: It sets.",
                        "",
                        16,
                        "simulations[1].scenes[1].choices[3].consequence",
                        "is missing"),
                Arguments.of(", why: Late.", "", 16, "simulations[1].scenes[1].choices[3].why", "is missing"),
                Arguments.of(
                        "          - { text: Wait, outcome: slip, consequence: It sets., why: Late., to: cup }\n",
                        "",
                        13,
                        "simulations[1].scenes[1].choices",
                        "has 2 choices, must have 3 to 6"),
                Arguments.of("id: full", "id: cup", 17, "simulations[1].scenes[2].id", "here twice"));
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void eachMistakeIsNamedWithItsPlaceAndARemedy(String from, String to, int line, String field, String words) {
        List<String> problems = SampleCourse.sound()
                .with(FILE, SIMULATIONS)
                .changed(FILE, from, to)
                .problems();
        assertThat(problems).as("%s instead of %s", to, from).anySatisfy(problem -> assertThat(problem)
                .contains(FILE + ":" + line, field)
                .containsIgnoringCase(words));
    }

    @Test
    void aRoundWithoutAnEndIsFound() {
        String again = "          - { text: %s, outcome: safe, consequence: On., why: On., to: full }\n";
        String round = SIMULATIONS.replace(
                "        text: The end.\n        ending: true\n",
                "        text: The end.\n        choices:\n" + again.formatted("One") + again.formatted("Two")
                        + again.formatted("Three"));
        assertThat(round).isNotEqualTo(SIMULATIONS);
        assertThat(SampleCourse.sound().with(FILE, round).problems())
                .singleElement()
                .asString()
                .contains("scenes[2].choices", "Never come to an end");
    }
}
