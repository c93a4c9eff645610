package org.riseandgel.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each mistake in {@code checks.yaml} is reported once, at its line, with what would be right. */
class BrokenChecksTest {
    private static final String FILE = "lessons/checks.yaml";
    private static final String CHECKS =
            """
            checks:
              - id: first-check
                title: Rising
                about: How far it rose.
                skill-shares:
                  - { skill: rising, level: 2, count: 1 }
                pass: { right: 1, of: 1, critical-wrong: 0 }
                per-day: 1
                talk-after-failed: 3
                for: clearance
            """;

    @Test
    void aSoundCheckHasNoProblem() {
        ContentLoader.Loaded loaded = SampleCourse.sound().with(FILE, CHECKS).load();
        assertThat(loaded.problems()).isEmpty();
        Check check = loaded.content().check("first-check").orElseThrow();
        assertThat(check.shares()).containsExactly(new Check.Share("rising", Set.of(2), 1, 0));
        assertThat(check.pass()).isEqualTo(new Check.Pass(1, 1, 0));
        assertThat(check.purpose()).isEqualTo("clearance");
        assertThat(check.talkAfterFailed()).isEqualTo(3);
    }

    @Test
    void aRecallCheckSaysWhenItComes() {
        String recall = CHECKS.replace("for: clearance", "for: recall\n    days-after-clearance: [30, 91, 182]");
        Check check = SampleCourse.sound()
                .with(FILE, recall)
                .load()
                .content()
                .check("first-check")
                .orElseThrow();
        assertThat(check.isRecall()).isTrue();
        assertThat(check.recallDays()).containsExactly(30, 91, 182);
    }

    @Test
    void aCourseMayHaveNoChecks() {
        assertThat(SampleCourse.sound().load().content().checks()).isEmpty();
    }

    @Test
    void onlyExercisesThatAskOneThingAreDrawn() {
        String twoParts =
                """
                  - part: again
                    prompt: What is the ratio?
                    of: foam.expansion
                    unit: "1"
                    tolerance: { percent: 2, because: a balance reads a tenth of a gram }
                    readability: 0.01
                slips:""";
        assertThat(SampleCourse.sound()
                        .changed(SampleCourse.EXERCISE, "slips:", twoParts)
                        .with(FILE, CHECKS)
                        .problems())
                .containsExactly(
                        FILE
                                + ":6 checks[1].skill-shares[1].count: Is 1, but there are only 0 exercises that ask one thing in rising at level 2; write more or draw fewer.");
    }

    static Stream<Arguments> mistakes() {
        return Stream.of(
                mistake("checks:", "tests:", 1, "checks: Is missing; write a list, one item after each “-”.")
                        .and(1, "tests: Is not known here; use one of checks."),
                mistake(
                        "id: first-check",
                        "id: First",
                        2,
                        "checks[1].id: Is “First”, must be small letters, digits and hyphens."),
                mistake("    title: Rising\n", "", 2, "checks[1].title: Is missing; write “title: …”."),
                mistake("    about: How far it rose.\n", "", 2, "checks[1].about: Is missing; write “about: …”."),
                mistake(
                        "skill: rising",
                        "skill: flying",
                        6,
                        "checks[1].skill-shares[1].skill: Names the skill “flying”, which is not in course.yaml; use one of rising."),
                mistake(
                        "level: 2",
                        "level: 4",
                        6,
                        "checks[1].skill-shares[1].level: Is “4”, must be 1, 2 or 3; leave it out to draw from all."),
                mistake(
                        "level: 2",
                        "level: 3",
                        6,
                        "checks[1].skill-shares[1].count: Is 1, but there are only 0 exercises that ask one thing in rising at level 3; write more or draw fewer."),
                mistake(
                                "count: 1",
                                "count: none",
                                6,
                                "checks[1].skill-shares[1].count: Is “none”, must be a whole number from 1 to 60.")
                        .and(7, "checks[1].pass.of: Is 1, but the shares draw 0 items together; make them agree."),
                mistake(
                        "count: 1",
                        "count: 1, critical-at-least: 1",
                        6,
                        "checks[1].skill-shares[1].critical-at-least: Is 1, but only 0 of the exercises in rising at level 2 that ask one thing are critical; mark or write more, or ask for fewer."),
                mistake(
                        "count: 1",
                        "count: 1, critical-at-least: 2",
                        6,
                        "checks[1].skill-shares[1].critical-at-least: Is 2, but only 1 items are drawn."),
                mistake(
                        "count: 1",
                        "count: 1, weight: 1",
                        6,
                        "checks[1].skill-shares[1].weight: Is not known here; use one of skill, count, critical-at-least, level."),
                mistake(
                        "of: 1",
                        "of: 12",
                        7,
                        "checks[1].pass.of: Is 12, but the shares draw 1 items together; make them agree."),
                mistake(
                        "right: 1",
                        "right: 2",
                        7,
                        "checks[1].pass.right: Is 2, must not be more than the 1 items drawn."),
                mistake(
                        ", critical-wrong: 0",
                        "",
                        7,
                        "checks[1].pass.critical-wrong: Is missing; write “critical-wrong: …”."),
                mistake(
                        "pass: { right: 1, of: 1, critical-wrong: 0 }",
                        "pass: 1",
                        7,
                        "checks[1].pass: Must be a group of names with values."),
                mistake(
                        "    pass: { right: 1, of: 1, critical-wrong: 0 }\n",
                        "",
                        2,
                        "checks[1].pass: Is missing; write “pass: { … }”."),
                mistake(
                        "per-day: 1",
                        "per-day: 2",
                        8,
                        "checks[1].per-day: Is “2”, must be a whole number from 1 to 1."),
                mistake(
                        "talk-after-failed: 3",
                        "talk-after-failed: 0",
                        9,
                        "checks[1].talk-after-failed: Is “0”, must be a whole number from 1 to 20."),
                mistake(
                        "for: clearance",
                        "for: fun",
                        10,
                        "checks[1].for: Is “fun”, must be clearance or recall; leave it out otherwise."),
                mistake(
                        "for: clearance",
                        "time-limit: 10",
                        10,
                        "checks[1].time-limit: Is not known here; use one of id, title, about, skill-shares, pass, per-day, talk-after-failed, for, days-after-clearance."),
                mistake(
                        "for: clearance",
                        "for: recall",
                        2,
                        "checks[1].days-after-clearance: Is missing; write a list, one item after each “-”."),
                mistake(
                        "for: clearance",
                        "for: recall\n    days-after-clearance: [30, 40]",
                        11,
                        "checks[1].days-after-clearance: Has “40”, must be a whole number from 44 to 1000, each at least 14 above the one before."),
                mistake(
                        "for: clearance",
                        "for: recall\n    days-after-clearance: []",
                        11,
                        "checks[1].days-after-clearance: Is empty, must name at least one day."),
                mistake(
                        "for: clearance",
                        "for: clearance\n    days-after-clearance: [30]",
                        11,
                        "checks[1].days-after-clearance: Is only for a check with “for: recall”; leave it out."),
                mistake(
                        "      - { skill: rising, level: 2, count: 1 }\n    pass: { right: 1, of: 1",
                        "      - { skill: rising, level: 2, count: 1 }\n      - { skill: rising, count: 1 }\n    pass: { right: 1, of: 2",
                        7,
                        "checks[1].skill-shares[2].skill: Draws from the same exercises as a share above; join the two, or name different levels."));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mistakes")
    void isReportedWithItsRemedy(String change, String text, List<String> reports) {
        assertThat(SampleCourse.sound().with(FILE, text).problems()).as(change).containsExactlyElementsOf(reports);
    }

    @Test
    void anIdIsUsedOnce() {
        String twice = CHECKS + CHECKS.substring(CHECKS.indexOf('\n') + 1);
        assertThat(SampleCourse.sound().with(FILE, twice).problems())
                .containsExactly(FILE + ":11 checks[2].id: “first-check” is here twice; every id is used once.");
    }

    private static Mistake mistake(String from, String to, int line, String report) {
        if (!CHECKS.contains(from)) {
            throw new IllegalArgumentException("not there: " + from);
        }
        return new Mistake(from + " → " + to, CHECKS.replace(from, to), List.of(FILE + ":" + line + " " + report));
    }

    private record Mistake(String change, String text, List<String> reports) implements Arguments {
        Mistake and(int line, String report) {
            return new Mistake(
                    change,
                    text,
                    Stream.concat(reports.stream(), Stream.of(FILE + ":" + line + " " + report))
                            .toList());
        }

        @Override
        public Object[] get() {
            return new Object[] {change, text, reports};
        }
    }
}
