package org.riseandgel.clearance.policy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Policy;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Objective;
import org.riseandgel.exercise.ContentProblem;
import org.riseandgel.platform.content.ContentSource;

class PolicyReaderTest {
    private static final String REAL = real();

    @Test
    void theSchoolsPolicyIsSound() {
        PolicyReader.Read read = PolicyReader.read(REAL);
        assertThat(read.problems()).isEmpty();
        Policy policy = read.policy().orElseThrow();
        assertThat(policy.version()).matches("[0-9a-f]{16}");
        assertThat(policy.checklists())
                .allSatisfy(list -> assertThat(list.version()).matches("[0-9a-f]{16}"));
        assertThat(policy.ppeFor(Form.POWDER).orElseThrow()).contains("respirator");
    }

    /** The content map of the hazard training: what has to be known is also seen being done. */
    @Test
    void everyObjectiveOfTheCourseIsShownByAStepAndNoStepNamesAnother() {
        Set<String> shown = PolicyReader.read(REAL).policy().orElseThrow().checklists().stream()
                .flatMap(list -> list.steps().stream())
                .flatMap(step -> step.objectives().stream())
                .collect(Collectors.toSet());
        List<Objective> objectives =
                new CourseContent(new ContentSource(Optional.empty())).course().objectives();
        assertThat(objectives).hasSizeGreaterThan(20);
        assertThat(shown)
                .containsExactlyInAnyOrderElementsOf(
                        objectives.stream().map(Objective::id).toList());
    }

    /** Whoever has the salt out of its place shows all of this, whichever form it is and whichever one task it is for. */
    @ParameterizedTest
    @EnumSource(Form.class)
    void whateverTheScopeWhatProtectsIsSeen(Form form) {
        for (Task task : Task.values()) {
            assertThat(seen(form, task))
                    .as("%s %s", form, task)
                    .contains("who-may-handle", "delayed-effects", "hygiene", "acids-apart", "gloves")
                    .contains("eye-protection", "breathing-protection", "don-and-doff", "release-detection")
                    .contains("spill", "waste", "first-response", "emergency-call", "near-miss");
        }
        for (Task task : List.of(Task.WEIGH, Task.DISPERSE, Task.DOSE)) {
            assertThat(seen(form, task))
                    .as("%s %s", form, task)
                    .contains("label-and-sds", "limit-as-fluoride", "routes", "dust-free-weighing", "extraction");
        }
        assertThat(seen(form, Task.STORE)).contains("cold-storage", "label-and-sds");
    }

    @Test
    void commentsDoNotChangeTheVersionAndStepsDo() {
        String version = version(REAL);
        assertThat(version(REAL + "\n# a remark\n")).isEqualTo(version);
        assertThat(version(REAL.replace("Goggles on before", "Goggles on long before")))
                .isNotEqualTo(version);
        assertThat(version(REAL.replace("idle-days: 90", "idle-days: 60"))).isNotEqualTo(version);
    }

    @Test
    void cr09_noPeriodGoesBeyondItsLimit() {
        assertThat(problems("  validity-months: 12", "  validity-months: 37"))
                .containsExactly("periods.validity-months: is “37”, must be a whole number from 1 to 36.");
        assertThat(problems("respirator-validity-months: 12", "respirator-validity-months: 13"))
                .hasSize(1);
        assertThat(problems("single-instructor-months: 6", "single-instructor-months: 7"))
                .hasSize(1);
        assertThat(problems("early-renewal-days: 60", "early-renewal-days: 61")).hasSize(1);
        assertThat(problems("separation-months: 24", "separation-months: 23")).hasSize(1);
        assertThat(problems("retention-years: 6", "retention-years: 4")).hasSize(1);
    }

    @Test
    void cr03_theGateIsNeverLaxer() {
        assertThat(problems("right: 11,", "right: 10,")).anyMatch(problem -> problem.startsWith("knowledge.right"));
        assertThat(problems("items: 12, right: 11", "items: 24, right: 21")).hasSize(1);
        assertThat(problems("sittings: 2", "sittings: 1")).hasSize(1);
        assertThat(problems("hours-apart: 24", "hours-apart: 23")).hasSize(1);
        assertThat(problems("days: 60 }", "days: 61 }")).hasSize(1);
    }

    @Test
    void everyProblemIsToldWithItsLine() {
        String broken = REAL.replace("  - id: spill-response", "  - id: weigh-out-powder")
                .replace("tasks: [store, clean, waste]", "tasks: [store, clean, burn]")
                .replace("single-instructor: true", "single-instructor: perhaps\nextra: 1");
        List<ContentProblem> found = PolicyReader.read(broken).problems();
        assertThat(found)
                .extracting(ContentProblem::field)
                .contains("single-instructor", "extra", "checklists[3].id", "checklists[4].tasks");
        assertThat(found).allSatisfy(problem -> assertThat(problem.line()).isPositive());
        assertThat(PolicyReader.read(broken).policy()).isEmpty();
        assertThat(PolicyReader.read("- a").problems()).hasSize(1);
        assertThat(PolicyReader.read("").problems()).hasSize(1);
    }

    @Test
    void aTaskThatNobodyCouldBeClearedForIsFound() {
        assertThat(problems("tasks: [store, weigh, disperse, dose, clean, spill, waste]", "tasks: [weigh]"))
                .contains("checklists: has no practical for the task “spill” with the form “powder”.");
    }

    private static Set<String> seen(Form form, Task task) {
        return PolicyReader.read(REAL).policy().orElseThrow().checklists().stream()
                .filter(list -> list.forms().contains(form) && list.tasks().contains(task))
                .flatMap(list -> list.steps().stream())
                .flatMap(step -> step.objectives().stream())
                .collect(Collectors.toSet());
    }

    private static List<String> problems(String right, String wrong) {
        assertThat(REAL).contains(right);
        return PolicyReader.read(REAL.replace(right, wrong)).problems().stream()
                .map(problem -> problem.field() + ": " + problem.message())
                .toList();
    }

    private static String version(String text) {
        return PolicyReader.read(text).policy().orElseThrow().version();
    }

    private static String real() {
        try {
            return Files.readString(Path.of(PolicyReader.FILE));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
