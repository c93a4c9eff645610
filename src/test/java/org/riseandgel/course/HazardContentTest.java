package org.riseandgel.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.OptionsTemplate;
import org.riseandgel.platform.content.ContentSource;

/** What the hazard lessons and the exercises on safe handling must have, so that nothing which protects is left out. */
class HazardContentTest {
    private static final String STAGE = "01-bench-and-hazards";
    private static final String SAFE_HANDLING = "safe-handling";
    private static final int ITEMS_PER_OBJECTIVE = 2;
    private static final Content REAL = ContentLoader.load(
                    new ContentSource(Optional.of(".")).read(), Catalogue.standard())
            .content();

    @TestFactory
    Stream<DynamicTest> everyObjectiveIsAskedAtLeastTwice() {
        List<String> asked = Stream.concat(
                        questions().flatMap(question -> question.objectives().stream()),
                        REAL.exercises().all().stream().flatMap(exercise -> exercise.objectives().stream()))
                .toList();
        assertThat(REAL.course().objectives()).hasSizeGreaterThan(20);
        return REAL.course().objectives().stream()
                .map(objective -> DynamicTest.dynamicTest(objective.id(), () -> assertThat(asked)
                        .filteredOn(objective.id()::equals)
                        .hasSizeGreaterThanOrEqualTo(ITEMS_PER_OBJECTIVE)));
    }

    /** What is asked is also looked at: the steps of the observation checklists name the objectives that they show. */
    @Test
    void everyObjectiveIsShownAtTheBench() throws IOException {
        String checklists = Files.readString(Path.of("lessons/clearance.yaml"));
        Set<String> shown = Pattern.compile("objectives: \\[([^]]*)]")
                .matcher(checklists)
                .results()
                .flatMap(found -> Stream.of(found.group(1).split(",")))
                .map(String::strip)
                .filter(id -> !id.isEmpty())
                .collect(Collectors.toSet());
        assertThat(shown)
                .containsExactlyInAnyOrderElementsOf(
                        REAL.course().objectives().stream().map(Objective::id).toList());
    }

    /** LX-16: what is looked for in memory before the text stays there longer. */
    @Test
    void everyHazardLessonBeginsWithThreeQuestions() {
        assertThat(lessons()).isNotEmpty().allSatisfy(lesson -> assertThat(lesson.recall())
                .as(lesson.key().id())
                .hasSizeGreaterThanOrEqualTo(3));
    }

    @Test
    void lessonsThatTellToCallSayWhom() {
        List<String> telling = lessons().stream()
                .filter(lesson -> lesson.body()
                        .html(DecimalMark.POINT, "Aunt Emergency, 112")
                        .contains("Aunt Emergency"))
                .map(lesson -> lesson.key().lesson())
                .toList();
        assertThat(telling).contains("02-what-the-salt-does", "07-storage-spill-waste", "08-first-response");
    }

    /** Enough for two checks of twelve that share little, and for four critical items in each. */
    @Test
    void thereAreEnoughExercisesForTwoChecks() {
        List<ExerciseTemplate> pool = safeHandling();
        assertThat(pool).hasSizeGreaterThanOrEqualTo(24);
        assertThat(pool).filteredOn(ExerciseTemplate::critical).hasSizeGreaterThanOrEqualTo(12);
        assertThat(pool).extracting(ExerciseTemplate::level).contains(1, 2, 3);
    }

    /** Who picks the longest option each time must not get far. */
    @Test
    void theRightOptionIsNotToldByItsLength() {
        List<List<OptionsTemplate.Option>> exercises = safeHandling().stream()
                .filter(OptionsTemplate.class::isInstance)
                .map(template -> ((OptionsTemplate) template).options())
                .filter(options ->
                        options.stream().filter(OptionsTemplate.Option::right).count() == 1)
                .toList();
        long byExercise = exercises.stream()
                .filter(options -> longest(options.stream()
                                .map(OptionsTemplate.Option::text)
                                .toList())
                        == rightOf(options.stream()
                                .map(OptionsTemplate.Option::right)
                                .toList()))
                .count();
        List<Question> asked = questions().toList();
        long byQuestion = asked.stream()
                .filter(question -> longest(question.options().stream()
                                .map(Question.Option::text)
                                .toList())
                        == rightOf(question.options().stream()
                                .map(Question.Option::right)
                                .toList()))
                .count();
        assertThat(byExercise).isLessThanOrEqualTo(exercises.size() * 4L / 10);
        assertThat(byQuestion).isLessThanOrEqualTo(asked.size() * 4L / 10);
    }

    private static int longest(List<String> texts) {
        return IntStream.range(0, texts.size())
                .reduce((one, other) ->
                        texts.get(other).length() > texts.get(one).length() ? other : one)
                .orElseThrow();
    }

    private static int rightOf(List<Boolean> right) {
        return right.indexOf(true);
    }

    private static List<Lesson> lessons() {
        return REAL.lessons().values().stream()
                .filter(lesson -> lesson.key().stage().equals(STAGE))
                .toList();
    }

    private static Stream<Question> questions() {
        return lessons().stream().flatMap(lesson -> Stream.of(lesson.recall(), lesson.selfCheck())
                .flatMap(Collection::stream));
    }

    private static List<ExerciseTemplate> safeHandling() {
        return REAL.exercises().all().stream()
                .filter(template -> template.skill().equals(SAFE_HANDLING))
                .toList();
    }
}
