package org.riseandgel.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.riseandgel.course.SampleCourse.COURSE;
import static org.riseandgel.course.SampleCourse.FIGURE;
import static org.riseandgel.course.SampleCourse.LESSON;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Catalogue;

/** Each kind of mistake an author can make is reported once, at its line, with what would be right. */
class BrokenCourseTest {
    private static final String BENCH =
            Catalogue.standard().all().stream().map(Calculation::id).collect(Collectors.joining(", "));

    @Test
    void aSoundCourseHasNoProblem() {
        assertThat(SampleCourse.sound().problems()).isEmpty();
    }

    @Test
    void aWorkedBlockCannotTakeTheNameOfTheSchool() {
        assertThat(SampleCourse.sound()
                        .changed(LESSON, "name: cup", "name: school")
                        .problems())
                .anyMatch(problem -> problem.endsWith("“school” stands for the school itself; choose another name."));
    }

    /** With the foam gelled before the mold is shut there is no time to spare, and nothing to show for it. */
    @Test
    void aResultThatTheInputsDoNotTellIsReported() {
        assertThat(SampleCourse.sound()
                        .changed(
                                LESSON,
                                """
                                calculation: foam-density
                                title: One cup of foam
                                story: A troll's cheek.
                                inputs:
                                  emptyCup: 8.4 g
                                  fullCup: 33.9 g
                                  cupVolume: 100 mL
                                  liquidDensity: 1.02 g/mL
                                results: [foamDensity, expansion]
                                """,
                                """
                                calculation: gel-clock
                                title: A warm room
                                inputs: { temperature: 35 °C }
                                results: [slack]
                                """)
                        .problems())
                .anyMatch(problem -> problem.endsWith("Cannot be worked: slack cannot be told from these numbers."));
    }

    static Stream<Arguments> mistakes() {
        return Stream.of(
                mistake(
                        COURSE,
                        "skills:\n",
                        "objectives:\n  - { id: wash, title: Wash }\n  - { id: wash, title: Again }\nskills:\n",
                        16,
                        "objectives[2].id: “wash” is here twice; every id is used once."),
                mistake(
                        LESSON,
                        "- question: What is a ratio of 4?",
                        "- objectives: [wash]\n    question: What is a ratio of 4?",
                        11,
                        "self-check[1].objectives: Names the objective “wash”, which is not in course.yaml; the objectives"
                                + " there are none."),
                mistake(LESSON, "title: Rising\n", "", 2, "title: Is missing; write “title: …”."),
                mistake(
                        LESSON,
                        "minutes: 5",
                        "minutes: five",
                        3,
                        "minutes: Is “five”, must be a whole number from 1 to 90."),
                mistake(
                        LESSON,
                        "minutes: 5",
                        "minutes: 5\nlevel: 2",
                        4,
                        "level: Is not known here; use one of hazard, title, minutes, objectives, skills, practice,"
                                + " sources, recall, self-check."),
                mistake(
                        LESSON,
                        "objectives:\n  - Say how far a foam rose\n",
                        "",
                        2,
                        "objectives: Is missing; write a list, one item after each “-”."),
                mistake(
                        LESSON,
                        "skills: [rising]",
                        "skills: [flying]",
                        6,
                        "skills: Names the skill “flying”, which is not in course.yaml; use one of rising."),
                mistake(
                        LESSON,
                        "practice: [rising]",
                        "practice: rising",
                        7,
                        "practice: Must be a list, one item after each “-”."),
                mistake(
                        LESSON,
                        "- common practice, no source",
                        "- unknown",
                        8,
                        "sources: “unknown” names no source; write “common practice, no source”."),
                mistake(
                        LESSON,
                        "sources:\n  - common practice, no source",
                        "sources: []",
                        8,
                        "sources: Names no source; name it, or write “common practice, no source”."),
                mistake(
                        LESSON,
                        "text: Four times the air, why",
                        "text: Four times the air, right: true, why",
                        12,
                        "self-check[1].options: Marks 2 options as right; mark exactly one with “right: true”."),
                mistake(
                        LESSON,
                        "right: true, why: Yes. }\n      - { text: Four times the air",
                        "why: Yes. }\n      - { text: Four times the air",
                        12,
                        "self-check[1].options: Marks 0 options as right; mark exactly one with “right: true”."),
                mistake(
                        LESSON,
                        "      - { text: A quarter, why: That is turned round. }\n",
                        "",
                        12,
                        "self-check[1].options: Has 3 options, must have 4."),
                mistake(
                        LESSON,
                        ", why: That is turned round.",
                        "",
                        15,
                        "self-check[1].options[3].why: Is missing; write “why: …”."),
                mistake(
                        LESSON,
                        "text: A quarter",
                        "text: Four cups",
                        16,
                        "self-check[1].options[4].text: “Four cups” is offered twice; offer it once."),
                mistake(
                        LESSON,
                        "title: Rising\n",
                        "title: Rising\nhazard: true\n",
                        2,
                        "recall: Is missing; write a list, one item after each “-”."),
                mistake(
                        LESSON,
                        "file: cup.svg",
                        "file: mug.svg",
                        33,
                        "file: “mug.svg” is not beside the lesson; put the drawing there or mend the name."),
                mistake(LESSON, "alt: A cup, wider at the top.\n", "", 33, "alt: Is missing; write “alt: …”."),
                mistake(
                        LESSON,
                        "calculation: foam-density",
                        "calculation: foam-weight",
                        42,
                        "calculation: “foam-weight” is not in the bench; use one of " + BENCH + "."),
                mistake(
                        LESSON,
                        "emptyCup: 8.4 g",
                        "empty: 8.4 g",
                        46,
                        "inputs.empty: Is not an input of foam-density; use one of emptyCup, fullCup, cupVolume,"
                                + " liquidDensity."),
                mistake(
                        LESSON,
                        "cupVolume: 100 mL",
                        "cupVolume: 100 g",
                        48,
                        "inputs.cupVolume: Volume of the cup: “100 g” is a mass, but a volume is asked for. Write it"
                                + " in mL."),
                mistake(
                        LESSON,
                        "cupVolume: 100 mL",
                        "cupVolume: -5 mL",
                        48,
                        "inputs.cupVolume: Volume of the cup is −5 mL, must be from 1 mL to 10 000 mL."),
                mistake(
                        LESSON,
                        "cupVolume: 100 mL",
                        "cupVolume: 1,234 mL",
                        48,
                        "inputs.cupVolume: Volume of the cup: “1,234 mL” can be read as “1.234 mL” or as “1234 mL”."
                                + " Write the one you mean."),
                mistake(
                        LESSON,
                        "fullCup: 33.9 g",
                        "fullCup: 3.9 g",
                        45,
                        "inputs: Cannot be worked: the filled cup is 3.9 g, must be more than the empty cup's 8.4 g."),
                mistake(
                        LESSON,
                        "results: [foamDensity, expansion]",
                        "results: [foamDensity, gain]",
                        50,
                        "results: “gain” is not a result of foam-density; use one of foamDensity, expansion."),
                mistake(
                        LESSON,
                        "{{cup.foamDensity}}",
                        "{{mug.foamDensity}}",
                        53,
                        "number: {{mug.foamDensity}}: no worked block here has “name: mug”."),
                mistake(
                        LESSON,
                        "{{cup.foamDensity}}",
                        "{{cup.mass}}",
                        53,
                        "number: {{cup.mass}}: cup gives foamDensity, expansion."),
                mistake(
                        LESSON,
                        "{{cup.foamDensity}}",
                        "{{school.telephone}}",
                        53,
                        "number: {{school.telephone}}: of the school a lesson can write {{school.emergency}}."),
                mistake(
                        LESSON,
                        "{{cup.foamDensity}}",
                        "{{cup foamDensity",
                        53,
                        "number: “{{” must be followed by the name of a worked block, a point, a result and “}}”."),
                mistake(
                        LESSON,
                        "Foam rises while the whisk turns. ",
                        "",
                        30,
                        "body: Has 42 words, must have 600 to 1200; say more."),
                mistake(
                        LESSON,
                        "## The cup",
                        "# The cup",
                        38,
                        "heading: Is of the first level, which is the title's; begin with ##."),
                mistake(LESSON, "## The cup", "#### The cup", 38, "heading: Jumps over a level; use ##."),
                mistake(
                        LESSON,
                        "See [practice]",
                        "<br>See [practice]",
                        55,
                        "html: <br> is not allowed in a lesson; write it as Markdown."),
                mistake(
                        LESSON,
                        "See [practice]",
                        "<script>alert(1)</script>\n\nSee [practice]",
                        55,
                        "html: Is not allowed in a lesson; write it as Markdown."),
                mistake(
                        LESSON,
                        "See [practice]",
                        "![cup](cup.svg) See [practice]",
                        55,
                        "image: Is not allowed in a lesson; use a figure block, which asks for a text too."),
                mistake(
                        LESSON,
                        "(skill:rising)",
                        "(skill:flying)",
                        55,
                        "link: “skill:flying” leads nowhere; link to skill:<skill>, bench:<calculation>, <lesson>.md"
                                + " or #<heading> as they are named."),
                mistake(
                        LESSON,
                        "(bench:foam-density)",
                        "(bench:foam)",
                        55,
                        "link: “bench:foam” leads nowhere; link to skill:<skill>, bench:<calculation>, <lesson>.md or"
                                + " #<heading> as they are named."),
                mistake(
                        LESSON,
                        "(02-standing.md)",
                        "(03-lying.md)",
                        56,
                        "link: “03-lying.md” leads nowhere; link to skill:<skill>, bench:<calculation>, <lesson>.md or"
                                + " #<heading> as they are named."),
                mistake(
                        LESSON,
                        "(02-standing.md#the-cup)",
                        "(02-standing.md#the-mug)",
                        56,
                        "link: “02-standing.md#the-mug” leads nowhere; link to skill:<skill>, bench:<calculation>,"
                                + " <lesson>.md or #<heading> as they are named."),
                mistake(
                        LESSON,
                        "(skill:rising)",
                        "(https://example.org/)",
                        55,
                        "link: “https://example.org/” leads nowhere; pages outside are not linked: name the source"
                                + " under “sources”."),
                mistake(
                        LESSON,
                        "(skill:rising)",
                        "(javascript:alert)",
                        55,
                        "link: “javascript:alert” leads nowhere; link to skill:<skill>, bench:<calculation>,"
                                + " <lesson>.md or #<heading> as they are named."),
                mistake(
                        LESSON,
                        "word: CAUTION",
                        "word: Careful",
                        63,
                        "word: Is “Careful”, must be DANGER, WARNING, CAUTION or NOTICE."),
                mistake(
                        LESSON,
                        "```aside",
                        "```sidenote",
                        68,
                        "sidenote: Is not a block that lessons know; use figure, worked, caution or aside."),
                mistake(LESSON, "text: Foam could *sting* in an eye.\n", "", 63, "text: Is missing; write “text: …”."),
                mistake(
                        LESSON,
                        "title: Why\n",
                        "title: Why: because\n",
                        69,
                        "This is no YAML: mapping values are not allowed here. Check the indentation, and put quotes"
                                + " around text that holds a colon or a brace."),
                mistake(
                        COURSE,
                        "number: 2",
                        "number: 3",
                        9,
                        "stages[2].number: Is 3, must be 2: stages are numbered in their order."),
                mistake(
                        COURSE,
                        "id: 02-later",
                        "id: 01-foam",
                        8,
                        "stages[2].id: “01-foam” is here twice; every id is used once."),
                mistake(
                        COURSE,
                        "stage: 01-foam,",
                        "stage: 03-never,",
                        15,
                        "skills[1].stage: Is “03-never”, must be the id of a stage above."),
                mistake(
                        COURSE,
                        "gate-skills: [rising]",
                        "gate-skills: [flying]",
                        7,
                        "gate-skills: Names the skill “flying”, which is not in course.yaml; use one of rising."),
                mistake(
                        COURSE,
                        "[01-rising, 02-standing]",
                        "[01-rising, 02-standing, 03-lying]",
                        6,
                        "lessons: Names “03-lying”, but there is no lessons/01-foam/03-lying.md; write it or take it"
                                + " off the list."),
                mistake(
                        COURSE,
                        "lessons: [01-rising, 02-standing]",
                        "lessons: &all [01-rising, 02-standing]",
                        6,
                        "stages[1].lessons: Anchors (&), aliases (*) and tags (!) are not used here; write the value"
                                + " out."),
                mistake(
                        FIGURE,
                        "viewBox=\"0 0 640 360\"",
                        "viewBox=\"0 0 640 360\" onload=\"alert(1)\"",
                        1,
                        "figure: “onload” on <svg> is not allowed; take it out."));
    }

    private static Arguments mistake(String file, String from, String to, int line, String report) {
        return Arguments.of(file, from, to, line, report);
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void aMistakeIsReportedExactly(String file, String from, String to, int line, String report) {
        SampleCourse broken = SampleCourse.sound().changed(file, from, to);
        assertThat(broken.problems()).containsExactly(file + ":" + line + " " + report);
    }

    @Test
    void everyMistakeOfAllFilesIsReportedAtOnce() {
        SampleCourse broken = SampleCourse.sound()
                .changed(LESSON, "minutes: 5", "minutes: 0")
                .changed(LESSON, "alt: A cup, wider at the top.\n", "")
                .changed(SampleCourse.SECOND, "minutes: 5", "minutes: 91")
                .changed(COURSE, "number: 2", "number: 7")
                .changed(FIGURE, "f-line", "f-pink")
                .changed(SampleCourse.EXERCISE, "skill: rising", "skill: flying");
        assertThat(broken.load().problems())
                .extracting(problem -> problem.file() + " " + problem.field())
                .contains(
                        LESSON + " minutes",
                        LESSON + " alt",
                        SampleCourse.SECOND + " minutes",
                        COURSE + " stages[2].number",
                        FIGURE + " figure",
                        SampleCourse.EXERCISE + " skill");
    }

    @Test
    void aLessonThatNoStageListsIsReported() {
        SampleCourse broken = SampleCourse.sound().changed(COURSE, "[01-rising, 02-standing]", "[01-rising]");
        assertThat(broken.problems())
                .contains(SampleCourse.SECOND + ":1 file: Is not in the list of its stage; add “02-standing” to the"
                        + " lessons of 01-foam in course.yaml.");
    }

    @Test
    void aFileOutsideTheStagesIsReported() {
        SampleCourse broken = SampleCourse.sound().with("lessons/03-lost/01-rising.md", "---\n---\n");
        assertThat(broken.problems())
                .contains("lessons/03-lost/01-rising.md:1 file: Lies in a folder that is no stage of course.yaml;"
                        + " name the folder as the stage.");
    }

    @Test
    void aLessonWithoutFrontMatterIsReported() {
        SampleCourse broken = SampleCourse.sound().with(SampleCourse.SECOND, "## Rising\n");
        assertThat(broken.problems())
                .contains(SampleCourse.SECOND + ":1 front matter: Is missing; begin with a line ---, the values, and"
                        + " a second line ---.");
    }

    @Test
    void aCourseWithoutItsFileIsReported() {
        assertThat(SampleCourse.sound().without(COURSE).problems())
                .contains(COURSE + ":1 file: Is missing; it names the stages, their lessons and the skills.");
    }

    @Test
    void aFigureThatIsWrongIsNotReportedAgainByTheLessonThatShowsIt() {
        SampleCourse broken = SampleCourse.sound().changed(FIGURE, "f-line", "f-pink");
        assertThat(broken.problems())
                .containsExactly(
                        FIGURE + ":3 figure: “class” on <path> names a class that is not in the figure kit: f-pink.");
    }

    @Test
    void aLessonOnHazardsBeginsWithThreeQuestions() {
        String recall = "hazard: true\nrecall:\n" + RECALL.repeat(3);
        Lesson lesson = SampleCourse.sound()
                .changed(LESSON, "title: Rising\n", "title: Rising\n" + recall)
                .firstLesson();
        assertThat(lesson.recall()).hasSize(3);
        assertThat(SampleCourse.sound()
                        .changed(LESSON, "title: Rising\n", "title: Rising\nhazard: true\nrecall:\n" + RECALL)
                        .problems())
                .containsExactly(LESSON + ":4 recall: Has 1 questions, must have 3 to 6.");
    }

    private static final String RECALL =
            """
              - question: What comes first?
                options:
                  - { text: Goggles, right: true, why: Yes. }
                  - { text: Gloves, why: Second. }
                  - { text: Apron, why: Third. }
                  - { text: Mask, why: Last. }
            """;
}
