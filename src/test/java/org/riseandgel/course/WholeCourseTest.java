package org.riseandgel.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.exercise.ExerciseKind;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.platform.content.ContentSource;

/** Whether the course is whole: enough lessons and exercises, of every kind, at every level, and a check for each stage. */
class WholeCourseTest {
    private static final Content REAL = ContentLoader.load(
                    new ContentSource(Optional.of(".")).read(), Catalogue.standard())
            .content();
    private static final List<ExerciseTemplate> ALL = REAL.exercises().all();

    @Test
    void nineStagesHaveThirtyLessonsAndMore() {
        assertThat(REAL.course().stages()).hasSize(9).allSatisfy(stage -> {
            assertThat(stage.lessons()).as(stage.id()).hasSizeGreaterThanOrEqualTo(3);
            assertThat(stage.gateSkills()).as(stage.id()).isNotEmpty();
        });
        assertThat(REAL.lessons()).hasSizeGreaterThanOrEqualTo(30);
    }

    /** Length is a matter of loading: 600 to 1,200 words, or a problem is reported. */
    @Test
    void everyLessonHasAFigureAWorkedExampleAnObjectiveASourceAndASelfCheck() {
        assertThat(REAL.lessons().values()).allSatisfy(lesson -> {
            Document page = page(lesson);
            assertThat(page.select("figure svg")).as(lesson.key().id()).isNotEmpty();
            assertThat(lesson.body().worked()).as(lesson.key().id()).isNotEmpty();
            assertThat(lesson.objectives()).as(lesson.key().id()).isNotEmpty();
            assertThat(lesson.sources()).as(lesson.key().id()).isNotEmpty();
            assertThat(lesson.selfCheck()).as(lesson.key().id()).hasSizeBetween(3, 6);
        });
    }

    @Test
    void thereAreNinetyExercisesAndSixtyOfThemAskForNumbers() {
        assertThat(ALL).hasSizeGreaterThanOrEqualTo(90);
        assertThat(ALL).filteredOn(WholeCourseTest::isNumeric).hasSizeGreaterThanOrEqualTo(60);
        assertThat(ALL).extracting(ExerciseTemplate::kind).contains(ExerciseKind.values());
    }

    @Test
    void twentyExercisesAndMoreAreOnSafeHandling() {
        List<ExerciseTemplate> safe = REAL.exercises().ofSkill("safe-handling");
        assertThat(safe).hasSizeGreaterThanOrEqualTo(20);
        assertThat(safe).filteredOn(ExerciseTemplate::critical).hasSizeGreaterThanOrEqualTo(12);
    }

    /** A ladder with a rung missing is climbed by nobody: what asks for numbers does so at every level. */
    @Test
    void everySkillHasExercisesAndEveryNumericOneAllThreeLevels() {
        assertThat(REAL.course().skills())
                .allSatisfy(skill -> assertThat(REAL.exercises().ofSkill(skill.id()))
                        .as(skill.id())
                        .extracting(ExerciseTemplate::level)
                        .contains(1, 2, 3));
        Map<String, Set<Integer>> levels = ALL.stream()
                .filter(WholeCourseTest::isNumeric)
                .collect(Collectors.groupingBy(
                        ExerciseTemplate::skill,
                        Collectors.mapping(ExerciseTemplate::level, Collectors.toCollection(TreeSet::new))));
        assertThat(levels).hasSizeGreaterThan(10);
        assertThat(levels)
                .allSatisfy((skill, present) -> assertThat(present).as(skill).containsExactly(1, 2, 3));
    }

    /** Every numeric exercise helps with two or three hints, and says where its facts are from. */
    @Test
    void everyNumericExerciseHasHintsAndASource() {
        assertThat(ALL).filteredOn(WholeCourseTest::isNumeric).allSatisfy(exercise -> {
            assertThat(exercise.head().hints()).as(exercise.id()).hasSizeBetween(2, 3);
            assertThat(exercise.head().source()).as(exercise.id()).isNotBlank();
        });
    }

    /** Two sittings in a row need not have an item in common. */
    @Test
    void everyStageHasACheckWithTwiceWhatItDraws() {
        assertThat(REAL.checks()).allSatisfy(check -> assertThat(check.shares())
                .allSatisfy(share -> assertThat(share.pool(REAL.exercises()))
                        .as(check.id() + " " + share.skill())
                        .hasSizeGreaterThanOrEqualTo(2 * share.count())));
        Set<String> checked = REAL.checks().stream()
                .flatMap(check -> check.shares().stream())
                .map(Check.Share::skill)
                .collect(Collectors.toSet());
        assertThat(REAL.course().skills()).extracting(Skill::id).allMatch(checked::contains);
    }

    /** A wrong working has the same numbers each time, and one guess in four finds its slip: it is for learning. */
    @Test
    void noCheckAsksForTheSlipInAWrongWorking() {
        assertThat(ALL).filteredOn(ExerciseTemplate::showsWrongWorking).hasSizeGreaterThanOrEqualTo(8);
        assertThat(REAL.checks())
                .flatMap(Check::shares)
                .flatMap(share -> share.pool(REAL.exercises()))
                .noneMatch(ExerciseTemplate::showsWrongWorking);
    }

    /** What is linked is the first use: nothing before it in the running text reads the same. */
    @Test
    void theFirstUseOfAWordIsItsOnlyLink() {
        for (Lesson lesson : REAL.lessons().values()) {
            Document page = page(lesson);
            List<String> targets = page.select("a.term").eachAttr("href");
            assertThat(targets).as(lesson.key().id()).isNotEmpty().doesNotHaveDuplicates();
            assertThat(lesson.body().terms()).hasSameSizeAs(targets);
            for (Element link : page.select("a.term")) {
                assertThat(link.closest("h2, h3, h4, figure, .worked"))
                        .as(lesson.key().id() + " " + link.text())
                        .isNull();
            }
        }
    }

    private static boolean isNumeric(ExerciseTemplate exercise) {
        return exercise.kind() == ExerciseKind.NUMERIC;
    }

    private static Document page(Lesson lesson) {
        return Jsoup.parse(lesson.body().html(DecimalMark.POINT));
    }
}
