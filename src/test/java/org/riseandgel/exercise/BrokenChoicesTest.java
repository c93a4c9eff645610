package org.riseandgel.exercise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.riseandgel.bench.Catalogue;

/** Each way in which an author can go wrong with an exercise without numbers, and the exact words that tell them. */
class BrokenChoicesTest {
    private static final String HEAD =
            """
            id: %s
            title: A title
            skill: foam
            level: 1
            kind: %s
            objectives: [wash-hands]
            story: |
              A story.
              A question?
            """;

    private static final String ONE = HEAD.formatted("one", "choose-one")
            + """
            shown: 4
            options:
              - { text: Red, right: true, why: Yes. }
              - { text: Blue, why: No., slip: blue taken for red }
              - { text: Green, why: Not that. }
              - { text: Grey, why: Nor that. }
              - { text: Brown, why: Never. }
            source: common practice, no source
            """;

    private static final String ALL = HEAD.formatted("all", "choose-all")
            + """
            options:
              - { text: Red, right: true, why: Yes. }
              - { text: Blue, right: true, why: Yes too. }
              - { text: Green, why: Not that. }
              - { text: Grey, why: Nor that. }
            source: common practice, no source
            """;

    private static final String ORDER = HEAD.formatted("order", "put-in-order")
            + """
            steps:
              - { text: First, why: Begins. }
              - { text: Second, why: Goes on. }
              - { text: Third, why: Goes on., with: 2 }
              - { text: Fourth, why: Ends. }
            source: common practice, no source
            """;

    private static final String MATCH = HEAD.formatted("match", "match")
            + """
            pairs:
              - { figure: crater.svg, alt: A hole., left: One, right: Uno, why: It is. }
              - { left: Two, right: Due, why: It is. }
              - { left: Three, right: Tre, why: It is. }
            others: [Quattro]
            source: common practice, no source
            """;

    private static final String FIGURE =
            """
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 360"><path class="f-line" d="M0 0 L9 9"/></svg>
            """;

    @Test
    void theSamplesHaveNoProblem() {
        for (String good : List.of(ONE, ALL, ORDER, MATCH)) {
            assertThat(told(good)).isEmpty();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mistakes")
    void tellsWhereAndWhat(String mistake, String good, String right, String wrong, String report) {
        assertThat(good).contains(right);
        assertThat(told(good.replace(right, wrong))).isEqualTo(report);
    }

    @Test
    void tellsEveryProblemInOneGo() {
        String text = ONE.replace("level: 1", "level: 4")
                .replace("shown: 4", "shown: 9")
                .replace("why: Never.", "reason: Never.");
        assertThat(told(text).lines().map(line -> line.substring(0, line.indexOf(':'))))
                .containsExactly("4 level", "16 options[5].reason", "16 options[5].why", "10 shown");
    }

    @Test
    void aFigureThatIsWrongIsToldOnceInItsOwnName() {
        List<SourceFile> files = List.of(
                new SourceFile("exercises/foam/match.yaml", MATCH),
                new SourceFile("exercises/foam/crater.svg", FIGURE.replace("<path", "<script")));
        assertThat(ExerciseLibrary.load(files, Catalogue.standard(), Set.of("foam"), Set.of("wash-hands"))
                        .problems())
                .isNotEmpty()
                .extracting(ContentProblem::file)
                .containsOnly("exercises/foam/crater.svg");
    }

    static Stream<Arguments> mistakes() {
        return Stream.of(
                arguments(
                        "a field of another kind",
                        ORDER,
                        "steps:\n",
                        "options: []\nsteps:\n",
                        "10 options: There is no field of that name here; the fields are id, title, skill, level, kind,"
                                + " critical, objectives, at-the-bench, story, shown, steps, hints, source."),
                arguments(
                        "an unknown objective",
                        ONE,
                        "[wash-hands]",
                        "[wash-feet]",
                        "6 objectives[1]: “wash-feet” is no objective of the course; the objectives are wash-hands."),
                arguments(
                        "a brace in a story without numbers",
                        ONE,
                        "A story.",
                        "A {story}.",
                        "7 story: Has a brace, but only a numeric exercise has drawn values; write the words out."),
                arguments(
                        "nothing right",
                        ONE,
                        "right: true, ",
                        "",
                        "11 options: Marks 0 options as right; mark exactly one with “right: true”."),
                arguments(
                        "two right where one is",
                        ONE,
                        "Blue, why: No., slip: blue taken for red",
                        "Blue, right: true, why: No.",
                        "11 options: Marks 2 options as right; mark exactly one with “right: true”."),
                arguments(
                        "a slip of the right one",
                        ONE,
                        "why: Yes.",
                        "why: Yes., slip: none",
                        "12 options[1].slip: Names a mistake, but the option is right."),
                arguments(
                        "an option twice",
                        ONE,
                        "Grey",
                        "GREEN",
                        "15 options[4].text: Stands here twice; write it once."),
                arguments(
                        "all of the above",
                        ONE,
                        "Brown",
                        "None of the above",
                        "16 options[5].text: Points at the other options, but they are shown in any order; say what is"
                                + " meant."),
                arguments(
                        "too few options",
                        ONE,
                        "  - { text: Grey, why: Nor that. }\n  - { text: Brown, why: Never. }\n",
                        "",
                        "11 options: Has 3 entries; write 4 to 12."),
                arguments(
                        "more shown than there are",
                        ONE,
                        "shown: 4",
                        "shown: 6",
                        "10 shown: Is “6”; write a whole number from 4 to 5."),
                arguments("an option without a reason", ONE, ", why: Never.", "", "16 options[5].why: Is missing."),
                arguments(
                        "right that is no flag",
                        ONE,
                        "right: true",
                        "right: yes",
                        "12 options[1].right: Is “yes”; write true or false.\n11 options: Marks 0 options as right; mark exactly one with “right: true”."),
                arguments(
                        "all of them right",
                        ALL,
                        "{ text: Green, why: Not that. }\n  - { text: Grey, why",
                        "{ text: Green, right: true, why: Not that. }\n  - { text: Grey, right: true, why",
                        "10 options: Marks 4 of 4 options as right; mark two or more, and leave at least one that is not."),
                arguments(
                        "one right where all apply",
                        ALL,
                        "Blue, right: true",
                        "Blue",
                        "10 options: Marks 1 of 4 options as right; mark two or more, and leave at least one that is not."),
                arguments(
                        "a tie to itself",
                        ORDER,
                        "with: 2",
                        "with: 3",
                        "13 steps[3].with: Ties the step to itself; name another step."),
                arguments(
                        "a tie over a step between",
                        ORDER,
                        "with: 2",
                        "with: 1",
                        "13 steps[3].with: Ties steps that others stand between; tie neighbours, or tie those between"
                                + " too."),
                arguments(
                        "a tie to no step",
                        ORDER,
                        "with: 2",
                        "with: 7",
                        "13 steps[3].with: Is “7”; write a whole number from 1 to 4."),
                arguments(
                        "all steps tied",
                        ORDER.replace("why: Goes on. }", "why: Goes on., with: 1 }"),
                        "why: Ends.",
                        "why: Ends., with: 3",
                        "10 steps: Ties all steps together, so that any order would be right; take a “with” out."),
                arguments(
                        "a step twice",
                        ORDER,
                        "Fourth",
                        "First",
                        "14 steps[4].text: Stands here twice; write it once."),
                arguments(
                        "no steps",
                        ORDER,
                        ORDER.substring(ORDER.indexOf("steps:"), ORDER.indexOf("source:")),
                        "steps: 7\n",
                        "10 steps: Is “7”; write a list, in brackets or with one dash per line."),
                arguments(
                        "no such figure",
                        MATCH,
                        "crater.svg",
                        "hole.svg",
                        "11 pairs[1].figure: There is no hole.svg beside the exercise; the figures there are"
                                + " crater.svg."),
                arguments("a figure without words", MATCH, " alt: A hole.,", "", "11 pairs[1].alt: Is missing."),
                arguments(
                        "words without a figure",
                        MATCH,
                        "figure: crater.svg, ",
                        "",
                        "11 pairs[1].alt: Describes a figure, but none is named; write “figure: …”."),
                arguments(
                        "an entry of others that belongs to something",
                        MATCH,
                        "[Quattro]",
                        "[Uno]",
                        "14 others[1]: Is among the right sides already; an entry of others belongs to nothing."),
                arguments(
                        "a left side twice",
                        MATCH,
                        "left: Two",
                        "left: One",
                        "12 pairs[2].left: Stands here twice; write it once."),
                arguments(
                        "too few right sides",
                        MATCH.replace("right: Due", "right: Uno"),
                        "right: Tre, why: It is. }\nothers: [Quattro]\n",
                        "right: Uno, why: It is. }\n",
                        "1 Has only 1 different right sides; give at least 3, in pairs or others."));
    }

    private static String told(String text) {
        String id = text.substring(4, text.indexOf('\n'));
        String path = "exercises/foam/" + id + ".yaml";
        List<SourceFile> files =
                List.of(new SourceFile(path, text), new SourceFile("exercises/foam/crater.svg", FIGURE));
        return ExerciseLibrary.load(files, Catalogue.standard(), Set.of("foam"), Set.of("wash-hands"))
                .problems()
                .stream()
                .map(problem -> problem.toString().replace(path + ":", ""))
                .collect(Collectors.joining("\n"));
    }
}
