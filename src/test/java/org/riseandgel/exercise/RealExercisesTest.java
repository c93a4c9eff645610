package org.riseandgel.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.riseandgel.bench.Catalogue;

/** The exercises that people really get: each without a problem, and good over a thousand draws. */
class RealExercisesTest {
    private static final Path FOLDER = Path.of("exercises");
    private static final ExerciseLibrary.Loaded LOADED = load();

    @Test
    void noneHasAProblem() {
        assertThat(LOADED.problems()).isEmpty();
        assertThat(LOADED.library().all()).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("all")
    void aThousandDrawsAreGoodAndJudgedAsWhatTheyAre(ExerciseTemplate template) {
        for (long seed = 0; seed < 1_000; seed++) {
            DrawnExercise drawn = LOADED.library().drawer().draw(template, seed);
            Judge.checkDraw(drawn);
            if (seed % 10 == 0) {
                Judge.checkAnswers(drawn);
            }
        }
    }

    static Stream<ExerciseTemplate> all() {
        return LOADED.library().all().stream();
    }

    private static ExerciseLibrary.Loaded load() {
        try (Stream<Path> paths = Files.walk(FOLDER)) {
            List<SourceFile> files = paths.filter(path -> path.toString().endsWith(".yaml"))
                    .sorted()
                    .map(RealExercisesTest::file)
                    .toList();
            Set<String> folders = files.stream().map(SourceFile::folder).collect(Collectors.toSet());
            return ExerciseLibrary.load(files, Catalogue.standard(), folders);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static SourceFile file(Path path) {
        try {
            return new SourceFile(path.toString().replace('\\', '/'), Files.readString(path));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
