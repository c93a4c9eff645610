package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.riseandgel.course.Content;
import org.riseandgel.course.Lesson;
import org.riseandgel.course.RealContent;
import org.riseandgel.course.Stage;
import org.riseandgel.course.StageGate;

/** A stage opens when the lessons before it are read and its gate skills are mastered; on the course as it is. */
class GatesTest {
    private static final Content NOW = RealContent.now();
    private static final List<Stage> STAGES = NOW.course().stages();

    private static Map<String, StageGate> gates(Set<String> read, Set<String> mastered, Set<String> byHand) {
        return Gates.of(NOW, new Gates.Progress(read, Set.of(), mastered, byHand));
    }

    private static Set<String> lessonsUpTo(int stage) {
        return STAGES.stream()
                .filter(one -> one.number() <= stage)
                .flatMap(one -> NOW.lessonsOf(one).stream())
                .map(lesson -> lesson.key().id())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static Set<String> skillsUpTo(int stage) {
        return STAGES.stream()
                .filter(one -> one.number() <= stage)
                .flatMap(one -> one.gateSkills().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static boolean isPractised(String skill) {
        return !NOW.exercises().ofSkill(skill).isEmpty();
    }

    @Test
    void theFirstStageIsOpenToEverybody() {
        Map<String, StageGate> gates = gates(Set.of(), Set.of(), Set.of());
        assertThat(gates.get(STAGES.get(0).id()).open()).isTrue();
        assertThat(gates.get(STAGES.get(STAGES.size() - 1).id()).open()).isFalse();
    }

    @Test
    void eachStageOpensWithTheOneBeforeItDone() {
        for (int number = 1; number < STAGES.size(); number++) {
            Map<String, StageGate> gates = gates(lessonsUpTo(number), skillsUpTo(number), Set.of());
            assertThat(gates.get(STAGES.get(number).id()).open())
                    .as("stage %d", number + 1)
                    .isTrue();
        }
    }

    @Test
    void oneLessonOrOneSkillLeftKeepsItShutAndIsNamed() {
        Stage last = STAGES.stream()
                .filter(stage -> !NOW.lessonsOf(stage).isEmpty() && stage.number() < STAGES.size())
                .filter(stage -> stage.gateSkills().stream().anyMatch(GatesTest::isPractised))
                .reduce((earlier, later) -> later)
                .orElseThrow();
        String next = STAGES.get(last.number()).id();
        Set<String> read = lessonsUpTo(last.number());
        Lesson unread = NOW.lessonsOf(last).get(0);
        read.remove(unread.key().id());
        StageGate gate = gates(read, skillsUpTo(last.number()), Set.of()).get(next);
        assertThat(gate.open()).isFalse();
        assertThat(gate.missing()).containsExactly(StageGate.Missing.lesson(last, unread));

        Set<String> mastered = skillsUpTo(last.number());
        String skill = last.gateSkills().stream()
                .filter(GatesTest::isPractised)
                .findFirst()
                .orElseThrow();
        mastered.remove(skill);
        StageGate other = gates(lessonsUpTo(last.number()), mastered, Set.of()).get(next);
        assertThat(other.open()).isFalse();
        assertThat(other.missing()).extracting(StageGate.Missing::address).containsExactly("/practice/skills/" + skill);
    }

    @Test
    void whatIsOpenedByHandIsOpenAndTheStagesAroundItAreNot() {
        Stage last = STAGES.get(STAGES.size() - 1);
        Map<String, StageGate> gates = gates(Set.of(), Set.of(), Set.of(last.id()));
        assertThat(gates.get(last.id()).open()).isTrue();
        assertThat(gates.get(last.id()).byHand()).isTrue();
        assertThat(gates.get(STAGES.get(STAGES.size() - 2).id()).open()).isFalse();
    }

    @Test
    void whatSomebodyPractisesIsNotShutAgain() {
        Stage last = STAGES.get(STAGES.size() - 1);
        String skill = NOW.course().skills().stream()
                .filter(one -> one.stage().equals(last.id()))
                .findFirst()
                .orElseThrow()
                .id();
        Gates.Progress begun = new Gates.Progress(Set.of(), Set.of(skill), Set.of(), Set.of());
        assertThat(Gates.of(NOW, begun).get(last.id()).open()).isTrue();
    }
}
