package org.riseandgel.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.DecimalMark;

/** The exercises that people really get: each without a problem, and good over a thousand draws. */
class RealExercisesTest {
    private static final Path FOLDER = Path.of("exercises");
    private static final long SEEDS = 1_000;

    /** Drawing anew, and typing every answer in every unit with both marks, takes its time: so often it is done. */
    private static final long EVERY = 25;

    /** Fewer mistakes with a name of their own, and too many wrong answers would be just wrong. */
    private static final int FEWEST_SLIPS = 3;

    private static final ExerciseLibrary.Loaded LOADED = load();

    @Test
    void noneHasAProblem() {
        assertThat(LOADED.problems()).isEmpty();
        assertThat(LOADED.library().all()).isNotEmpty();
    }

    /** The same file on another machine gives the same draw: the text alone rebuilds exercise and version. */
    @ParameterizedTest
    @MethodSource("all")
    void theKeptTextGivesTheSameExercise(ExerciseTemplate template) {
        ExerciseTemplate kept =
                LOADED.library().parse(template.file().path(), template.file().text());
        assertThat(kept.version()).isEqualTo(template.version());
        DrawnExercise now = LOADED.library().drawer().draw(template, 7);
        DrawnExercise then = LOADED.library().drawer().again(kept, now.seed());
        for (DecimalMark mark : DecimalMark.values()) {
            assertThat(SolvedView.of(then, mark)).isEqualTo(SolvedView.of(now, mark));
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void aThousandDrawsAreGoodAndJudgedAsWhatTheyAre(ExerciseTemplate template) {
        LongStream.range(0, SEEDS).parallel().forEach(seed -> {
            DrawnExercise drawn = LOADED.library().drawer().draw(template, seed);
            if (drawn instanceof DrawnChoice choice) {
                ChoiceJudge.check(choice);
                assertThat(LOADED.library().drawer().again(template, drawn.seed()))
                        .isEqualTo(drawn);
                return;
            }
            DrawnNumbers numbers = (DrawnNumbers) drawn;
            assertThat(slips(numbers)).as("slips of %s", numbers).hasSizeGreaterThanOrEqualTo(FEWEST_SLIPS);
            Judge.checkDraw(numbers);
            Judge.checkInTurn(numbers, seed);
            if (seed % EVERY == 0) {
                DrawnNumbers again = (DrawnNumbers) LOADED.library().drawer().again(template, drawn.seed());
                assertThat(again.values()).isEqualTo(numbers.values());
                assertThat(again.parts()).isEqualTo(numbers.parts());
                Judge.checkAnswers(numbers);
            }
        });
    }

    /** LX-02: what is shown as an example is right; wrong working says in its title that it is, and not to a beginner. */
    @Test
    void wrongWorkingIsLabelledAndNotForBeginners() {
        assertThat(LOADED.library().all())
                .filteredOn(ExerciseTemplate::showsWrongWorking)
                .hasSizeGreaterThanOrEqualTo(8)
                .allSatisfy(template -> {
                    assertThat(template.level()).isGreaterThan(1);
                    assertThat(template.kind()).isEqualTo(ExerciseKind.CHOOSE_ONE);
                });
    }

    /** The named mistakes that a draw can tell apart, over all its parts; that each is recognised is checked in turn. */
    private static Set<Slip> slips(DrawnNumbers drawn) {
        return drawn.parts().stream()
                .flatMap(part -> part.wrongAnswers().stream())
                .map(WrongAnswer::slip)
                .collect(Collectors.toSet());
    }

    static Stream<ExerciseTemplate> all() {
        return LOADED.library().all().stream();
    }

    private static ExerciseLibrary.Loaded load() {
        try (Stream<Path> paths = Files.walk(FOLDER)) {
            List<SourceFile> files = paths.filter(path -> Files.isRegularFile(path))
                    .sorted()
                    .map(RealExercisesTest::file)
                    .toList();
            Set<String> folders = files.stream().map(SourceFile::folder).collect(Collectors.toSet());
            return ExerciseLibrary.load(files, Catalogue.standard(), folders, objectives());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Whether they are in the course is checked with the course; here an exercise stands for itself. */
    private static Set<String> objectives() throws IOException {
        return Files.readAllLines(Path.of("lessons/course.yaml")).stream()
                .map(String::strip)
                .filter(line -> line.startsWith("- { id: "))
                .map(line -> line.substring(8, line.indexOf(',')).strip())
                .collect(Collectors.toSet());
    }

    private static SourceFile file(Path path) {
        try {
            return new SourceFile(path.toString().replace('\\', '/'), Files.readString(path));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
