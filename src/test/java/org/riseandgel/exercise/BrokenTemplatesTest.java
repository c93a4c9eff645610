package org.riseandgel.exercise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Catalogue;

/** Each way in which an author can go wrong, and the exact words that tell them. */
class BrokenTemplatesTest {
    private static final String BENCH =
            Catalogue.standard().all().stream().map(Calculation::id).collect(Collectors.joining(", "));

    private static final String PATH = "exercises/sticks/straight-beaker.yaml";
    private static final String GOOD = Samples.file(Samples.BEAKER).text();

    @Test
    void theSampleItselfHasNoProblem() {
        assertThat(problemsOf(GOOD)).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mistakes")
    void tellsWhereAndWhat(String mistake, String right, String wrong, String report) {
        assertThat(GOOD).contains(right);
        List<String> told = problemsOf(GOOD.replace(right, wrong)).stream()
                .map(problem -> problem.toString().replace(PATH + ":", ""))
                .toList();
        assertThat(String.join("\n", told)).isEqualTo(report);
    }

    @Test
    void anUnknownSlipIsToldWithThoseThereAre() {
        List<ContentProblem> problems = problemsOf(GOOD.replace("gain-for-ratio]", "gain-for-loss]"));
        assertThat(problems).singleElement().satisfies(problem -> {
            assertThat(problem.line()).isEqualTo(33);
            assertThat(problem.field()).isEqualTo("slips[3]");
            assertThat(problem.message())
                    .startsWith("“gain-for-loss” is no slip known here; the slips are ounces-for-grams, ")
                    .endsWith(".")
                    .contains("gain-for-ratio")
                    .doesNotContain("power-of-ten");
        });
    }

    @Test
    void tellsEveryProblemInOneGo() {
        String text = GOOD.replace("level: 2", "level: 7")
                .replace("calculation: stick-marks", "calculation: crystal-ball")
                .replace("step: 5, unit: mm", "step: 7, unit: mm")
                .replace("{ abs: 1,", "{ abs: 0,")
                .replace("gain-for-ratio]", "gain-for-loss]");
        assertThat(problemsOf(text))
                .extracting(ContentProblem::field)
                .containsExactly(
                        "level", "draw.diameter.step", "work.stick.calculation", "ask[1].tolerance.abs", "slips[3]");
    }

    @Test
    void asksForPartsInTheOrderOfTheWorking() {
        String later =
                """
                  - part: liquid
                    prompt: And how high does the liquid stand?
                    of: stick.liquidHeight
                    unit: mm
                    tolerance: { abs: 1, because: a stick is read to the millimetre }
                    readability: 1
                slips: [""";
        assertThat(problemsOf(GOOD.replace("slips: [", later)))
                .extracting(Object::toString)
                .containsExactly(PATH + ":33 ask[2]: The working of the part mark already shows this answer;"
                        + " ask in the order of the working.");
    }

    @Test
    void refusesTwoPartsOfOneName() {
        String part = GOOD.substring(GOOD.indexOf("  - part: mark"), GOOD.indexOf("slips:"));
        assertThat(problemsOf(GOOD.replace("slips:", part + "slips:")))
                .extracting(Object::toString)
                .containsExactly(PATH + ":33 ask[2]: Two parts are named “mark”; give each its own name.");
    }

    @Test
    void refusesAPercentageOfATemperature() {
        String text = Samples.file(Samples.OVEN).text().replace("{ abs: 0.5,", "{ percent: 1,");
        assertThat(problemsOf("exercises/heat/oven-dial.yaml", text))
                .extracting(Object::toString)
                .containsExactly("exercises/heat/oven-dial.yaml:20 ask[1].tolerance.percent: A share of a temperature"
                        + " means nothing, since its zero is chosen; write abs.");
    }

    @Test
    void refusesAnIdThatIsTaken() {
        SourceFile one = Samples.file(Samples.BEAKER);
        SourceFile other = new SourceFile("more/sticks/straight-beaker.yaml", one.text());
        ExerciseLibrary.Loaded loaded = ExerciseLibrary.load(List.of(one, other), Catalogue.standard(), Samples.SKILLS);
        assertThat(loaded.problems())
                .extracting(Object::toString)
                .containsExactly(
                        "more/sticks/straight-beaker.yaml:1 id: “straight-beaker” is already the id of " + PATH + ".");
        assertThat(loaded.library().all()).singleElement().satisfies(good -> assertThat(good.file())
                .isEqualTo(one));
    }

    @Test
    void oneBrokenFileHidesNoOther() {
        SourceFile broken = new SourceFile("exercises/foam/one-cup.yaml", "id: one-cup\n");
        ExerciseLibrary.Loaded loaded = ExerciseLibrary.load(
                List.of(broken, Samples.file(Samples.BEAKER)), Catalogue.standard(), Samples.SKILLS);
        assertThat(loaded.library().all()).extracting(ExerciseTemplate::id).containsExactly("straight-beaker");
        assertThat(loaded.problems()).extracting(ContentProblem::file).containsOnly(broken.path());
    }

    @Test
    void refusesWhatIsNoExerciseAtAll() {
        assertThat(problemsOf("")).extracting(Object::toString).containsExactly(PATH + ":1 The file is empty.");
        assertThat(problemsOf("- one\n- two\n"))
                .extracting(Object::toString)
                .containsExactly(PATH + ":1 Is a list; write a group of fields, one “name: value” each.");
        assertThat(problemsOf(GOOD + "---\nid: two\n"))
                .extracting(ContentProblem::message)
                .containsExactly("A second document starts here (---); a file holds one.");
        assertThat(problemsOf("x".repeat(20_001)))
                .extracting(ContentProblem::message)
                .containsExactly("The file has 20001 characters; at most 20000 are read.");
        assertThat(problemsOf("a: ".repeat(1) + "[".repeat(500)))
                .as("nested beyond all reason")
                .isNotEmpty();
    }

    @Test
    void aStoredVersionThatIsNoExerciseIsRefusedWithItsProblems() {
        assertThatThrownBy(() -> Samples.LIBRARY.parse(PATH, GOOD.replace("level: 2", "level: 9")))
                .isInstanceOf(BrokenContentException.class)
                .hasMessage(PATH + ":4 level: Is “9”; write a whole number from 1 to 3.");
    }

    static Stream<Arguments> mistakes() {
        return Stream.of(
                arguments(
                        "not yaml",
                        "title: Mark a straight beaker",
                        "title: [Mark a straight beaker",
                        "3 This is no YAML: while parsing a flow sequence. Check the indentation, and put quotes around text that holds a colon or a brace."),
                arguments(
                        "a name twice",
                        "level: 2\n",
                        "level: 2\nlevel: 3\n",
                        "5 level: Stands here a second time; a name may appear only once."),
                arguments(
                        "an alias",
                        "hints:\n",
                        "hints: &tips\n",
                        "34 hints: Anchors (&), aliases (*) and tags (!) are not used here; write the value out."),
                arguments(
                        "unknown field",
                        "level: 2\n",
                        "level: 2\ndifficulty: hard\n",
                        "5 difficulty: There is no field of that name here; the fields are id, title, skill, level, kind, critical, objectives, at-the-bench, story, draw, work, conditions, ask, slips, given-steps, hints, source."),
                arguments(
                        "unknown task at the bench",
                        "level: 2\n",
                        "level: 2\nat-the-bench: { form: dispersion, tasks: [weigh, pour] }\n",
                        "5 at-the-bench.tasks[2]: Is “pour”; the tasks are store, weigh, disperse, dose, clean, spill, waste."),
                arguments(
                        "unknown form at the bench",
                        "level: 2\n",
                        "level: 2\nat-the-bench: { form: paste, tasks: [weigh] }\n",
                        "5 at-the-bench.form: Is “paste”; the forms are powder, dispersion."),
                arguments(
                        "no task at the bench",
                        "level: 2\n",
                        "level: 2\nat-the-bench: { form: powder }\n",
                        "5 at-the-bench.tasks: Is missing."),
                arguments("missing field", "title: Mark a straight beaker\n", "", "1 title: Is missing."),
                arguments("empty field", "title: Mark a straight beaker", "title:", "2 title: Is empty; write a text."),
                arguments(
                        "text too long",
                        "title: Mark a straight beaker",
                        "title: long long long long long long long long long long long long long long long long long long long long ",
                        "2 title: Has 99 characters; at most 80 fit."),
                arguments(
                        "wrong id",
                        "id: straight-beaker",
                        "id: bent-beaker",
                        "1 id: Is “bent-beaker”, but the file is straight-beaker.yaml; they must agree."),
                arguments(
                        "id with capitals",
                        "id: straight-beaker",
                        "id: Straight Beaker",
                        "1 id: Is “Straight Beaker”; write small letters, digits and single hyphens."),
                arguments(
                        "wrong folder",
                        "skill: sticks",
                        "skill: foam",
                        "3 skill: Is “foam”, but the file is in the folder sticks; they must agree."),
                arguments(
                        "unknown skill",
                        "skill: sticks",
                        "skill: juggling",
                        "3 skill: “juggling” is no skill of the course; the skills are foam, heat, sticks, weighing."),
                arguments(
                        "unknown level", "level: 2", "level: 4", "4 level: Is “4”; write a whole number from 1 to 3."),
                arguments(
                        "unknown kind",
                        "kind: numeric",
                        "kind: essay",
                        "5 kind: Is “essay”; the kinds are numeric, choose-one, choose-all, put-in-order, match."),
                arguments(
                        "critical is no flag",
                        "kind: numeric",
                        "kind: numeric\ncritical: perhaps",
                        "6 critical: Is “perhaps”; write true or false."),
                arguments(
                        "unknown unit",
                        "step: 5, unit: mm",
                        "step: 5, unit: furlong",
                        "9 draw.diameter.unit: “furlong” is no unit known here; write one such as g, mm, mL, g/mL, Cel, min, php, % or \"1\"."),
                arguments(
                        "inverted range",
                        "from: 60, to: 120",
                        "from: 120, to: 60",
                        "9 draw.diameter: Runs from 120 to 60; “from” must be less than “to”."),
                arguments(
                        "step that misses the end",
                        "to: 120, step: 5",
                        "to: 120, step: 7",
                        "9 draw.diameter.step: Steps of 7 from 60 do not meet 120; choose them so that the last step ends there."),
                arguments(
                        "step of nothing",
                        "to: 120, step: 5",
                        "to: 120, step: 0",
                        "9 draw.diameter.step: Is 0; it must be more than 0."),
                arguments(
                        "number with a comma",
                        "from: 60",
                        "from: \"60,5\"",
                        "9 draw.diameter.from: Is “60,5”; write a plain number such as 12.5, with at most 15 digits."),
                arguments(
                        "number too long",
                        "from: 60",
                        "from: 60.12345678901234567",
                        "9 draw.diameter.from: Is “60.12345678901234567”; write a plain number such as 12.5, with at most 15 digits."),
                arguments(
                        "a choice twice",
                        "[150, 200, 250, 300]",
                        "[150, 200, 250, 200]",
                        "10 draw.charge.choices[4]: 200 stands in the list twice."),
                arguments(
                        "two ways of drawing",
                        "depth:    { fixed: 300, unit: mm }",
                        "depth:    { fixed: 300, choices: [300], unit: mm }",
                        "12 draw.depth: Give one of: from, to and step; choices; fixed."),
                arguments(
                        "a name that is none",
                        "  diameter: {",
                        "  Diameter-1: {",
                        "9 draw.Diameter-1: “Diameter-1” is no name; begin with a small letter and use letters and digits.\n18 work.stick.inputs.bottomDiameter: “diameter” is not drawn; the drawn values are Diameter-1, charge, ratio, depth.\n6 story: {diameter} is not drawn; the drawn values are Diameter-1, charge, ratio, depth."),
                arguments(
                        "unknown calculation",
                        "calculation: stick-marks",
                        "calculation: stick-mark",
                        "15 work.stick.calculation: “stick-mark” is no calculation of the bench; there are " + BENCH
                                + "."),
                arguments(
                        "unknown input",
                        "      whisk: {",
                        "      beater: {",
                        "22 work.stick.inputs.beater: “beater” is no input of stick-marks; its inputs are shape, bottomDiameter, topDiameter, depth, charge, ratio, whisk."),
                arguments(
                        "missing input",
                        "      charge: charge\n",
                        "",
                        "16 work.stick.inputs: “charge” is missing, and the answer depends on it."),
                arguments(
                        "undrawn input",
                        "bottomDiameter: diameter",
                        "bottomDiameter: width",
                        "18 work.stick.inputs.bottomDiameter: “width” is not drawn; the drawn values are diameter, charge, ratio, depth."),
                arguments(
                        "input of another kind",
                        "bottomDiameter: diameter",
                        "bottomDiameter: charge",
                        "18 work.stick.inputs.bottomDiameter: Is a volume, but bottomDiameter is a length, such as a number of cm."),
                arguments(
                        "input out of range",
                        "fixed: 300, unit: mm",
                        "fixed: 300, unit: m",
                        "19 work.stick.inputs.depth: Can be 300 m, but depth goes from 1 cm to 200 cm."),
                arguments(
                        "unknown option",
                        "{ choice: straight }",
                        "{ choice: conical }",
                        "17 work.stick.inputs.shape.choice: “conical” cannot be chosen; the options are straight, tapered."),
                arguments(
                        "chosen though measured",
                        "bottomDiameter: diameter",
                        "bottomDiameter: { choice: straight }",
                        "18 work.stick.inputs.bottomDiameter.choice: “bottomDiameter” is measured, not chosen; write a drawn name, a result or a fixed value."),
                arguments(
                        "measured though chosen",
                        "shape: { choice: straight }",
                        "shape: diameter",
                        "17 work.stick.inputs.shape: Is chosen from a list; write { choice: … }."),
                arguments(
                        "result of a later work",
                        "charge: charge",
                        "charge: { result: batch.liquidVolume }",
                        "20 work.stick.inputs.charge.result: “batch.liquidVolume” is no result of an earlier work; there are none."),
                arguments(
                        "unknown result",
                        "of: stick.markHeight",
                        "of: stick.height",
                        "29 ask[1].of: “stick.height” is neither a drawn value nor a result; there are diameter, charge, ratio, depth, stick.markHeight, stick.liquidHeight, stick.freeboard, stick.largestRatio. A step is written <work>.step.<id>."),
                arguments(
                        "asks for a drawn value",
                        "of: stick.markHeight",
                        "of: diameter",
                        "29 ask[1].of: “diameter” is drawn and shown; ask for a result or a step."),
                arguments(
                        "unknown step",
                        "of: stick.markHeight",
                        "of: stick.step.area",
                        "29 ask[1].of: “area” is no step of the working of stick; its steps are convert-bottomDiameter, convert-depth, radius, floorArea, liquidHeight, foamVolume, markHeight, capacity, freeboard, largestRatio."),
                arguments(
                        "unit of another kind",
                        "of: stick.markHeight\n    unit: mm",
                        "of: stick.markHeight\n    unit: mL",
                        "30 ask[1].unit: mL is a unit of volume, but stick.markHeight is a length, such as a number of cm."),
                arguments(
                        "step of another kind",
                        "of: stick.markHeight",
                        "of: stick.step.floorArea",
                        "30 ask[1].unit: mm is a unit of length, but stick.step.floorArea is an area."),
                arguments(
                        "no tolerance",
                        "{ abs: 1, because: a stick is read to the millimetre }",
                        "{ because: a stick is read to the millimetre }",
                        "31 ask[1].tolerance: Gives neither abs nor percent; write how close an answer must come, such as abs: 1."),
                arguments(
                        "tolerance of nothing",
                        "{ abs: 1,",
                        "{ abs: 0,",
                        "31 ask[1].tolerance.abs: Is 0; it must be more than 0."),
                arguments(
                        "tolerance finer than the stick",
                        "{ abs: 1,",
                        "{ abs: 0.2,",
                        "31 ask[1].tolerance.abs: Is finer than half the readability of 1; nobody can read it that closely."),
                arguments(
                        "tolerance too wide",
                        "{ abs: 1,",
                        "{ percent: 40,",
                        "31 ask[1].tolerance.percent: Is 40; it must be more than 0 and at most 10."),
                arguments(
                        "tolerance without reason",
                        "{ abs: 1, because: a stick is read to the millimetre }",
                        "{ abs: 1 }",
                        "31 ask[1].tolerance.because: Is missing."),
                arguments(
                        "condition without limit",
                        "stick.freeboard, atLeast: 20, unit: mm",
                        "stick.freeboard, unit: mm",
                        "24 conditions[1]: Gives neither atLeast nor atMost."),
                arguments(
                        "condition nobody can meet",
                        "atMost: 260",
                        "atLeast: 300, atMost: 260",
                        "25 conditions[2]: “atLeast” is more than “atMost”; no draw could meet that."),
                arguments(
                        "condition in another kind",
                        "atMost: 260, unit: mm",
                        "atMost: 260, unit: g",
                        "25 conditions[2].unit: g is a unit of mass, but stick.markHeight is a length, such as a number of cm."),
                arguments(
                        "slip that is always looked for",
                        "gain-for-ratio]",
                        "power-of-ten]",
                        "33 slips[3]: “power-of-ten” is looked for in every exercise; leave it out."),
                arguments(
                        "slip that cannot happen",
                        "gain-for-ratio]",
                        "percent-for-php]",
                        "33 slips[3]: “percent-for-php” cannot happen in what is asked; what can happen is diameter-for-radius, radius-for-diameter, gain-for-ratio."),
                arguments(
                        "unknown name in a text",
                        "mark for {ratio} times",
                        "mark for {times} times",
                        "28 ask[1].prompt: {times} is not drawn; the drawn values are diameter, charge, ratio, depth."),
                arguments(
                        "lonely brace",
                        "mark for {ratio} times",
                        "mark for {ratio times",
                        "28 ask[1].prompt: Has a brace without its partner; braces stand only around the name of a drawn value."),
                arguments(
                        "unknown name in a hint",
                        "has {ratio} times",
                        "has {rate} times",
                        "36 hints[2]: {rate} is not drawn; the drawn values are diameter, charge, ratio, depth."),
                arguments(
                        "drawn but never used",
                        "  depth:    {",
                        "  room:     { fixed: 20, unit: g }\n  depth:    {",
                        "12 draw.room: Is drawn but never used; take it out, or use it."),
                arguments(
                        "drawn but never told",
                        " that is {diameter} wide inside",
                        "",
                        "9 draw.diameter: Differs from draw to draw but is never told; write {diameter} in the story or a prompt."),
                arguments(
                        "given step that is none",
                        "slips: [",
                        "given-steps: [stick]\nslips: [",
                        "33 given-steps[1]: “stick” is no step; write a work's name, a point and the step's id."),
                arguments(
                        "given step not in the working",
                        "slips: [",
                        "given-steps: [stick.area]\nslips: [",
                        "33 given-steps[1]: “area” is no step of the working of stick; its steps are convert-bottomDiameter, convert-depth, radius, floorArea, liquidHeight, foamVolume, markHeight, capacity, freeboard, largestRatio."),
                arguments(
                        "given step that tells the answer",
                        "slips: [",
                        "given-steps: [stick.markHeight]\nslips: [",
                        "33 given-steps[1]: Shows the answer of the part mark; show only steps before it."),
                arguments(
                        "never possible",
                        "fixed: 300, unit: mm",
                        "fixed: 20, unit: mm",
                        "8 draw: Of 200 draws none is physically possible: ratio is 4, must be from 1 to 1.15: the foam would go over the rim, and the largest ratio that fits is 1.15."),
                arguments(
                        "condition never met",
                        "atMost: 260",
                        "atMost: 3",
                        "8 draw: No draw passed in 200 tries. 194 times: stick.markHeight is above its condition; 6 times: ratio is 4, must be from 1 to 3.39: the foam would go over the rim, and the largest ratio that fits is 3.39. Widen what is drawn, or narrow the tolerance."),
                arguments(
                        "tolerance that blurs every slip",
                        "{ abs: 1,",
                        "{ abs: 60,",
                        "8 draw: No draw passed in 200 tries. 131 times: the answer of part mark is a number that was given; 36 times: the answer of part mark is 0 or 1; 27 times: in part mark, the slip diameter-for-radius is less than three tolerances from the right answer. Widen what is drawn, or narrow the tolerance."));
    }

    private static List<ContentProblem> problemsOf(String text) {
        return problemsOf(PATH, text);
    }

    private static List<ContentProblem> problemsOf(String path, String text) {
        return ExerciseLibrary.load(List.of(new SourceFile(path, text)), Catalogue.standard(), Samples.SKILLS)
                .problems();
    }
}
