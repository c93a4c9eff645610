package org.riseandgel.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.platform.content.ContentSource;

/** How easily each lesson reads; the build prints it and keeps it in {@code target/reading-ease.txt}. */
class ReadingEaseTest {
    /** The reader is sixteen: 50 is where Flesch, 1948, has "fairly difficult" begin, downwards (from memory). */
    private static final double HARDEST = 50;

    @ParameterizedTest
    @CsvSource({"foam, 1", "whisk, 1", "whisked, 2", "table, 2", "make, 1", "gelling, 2", "volume, 2", "the, 1", "12, 1"
    })
    void syllablesAreGroupsOfVowels(String word, int syllables) {
        assertThat(ReadingEase.syllables(word)).isEqualTo(syllables);
    }

    @Test
    void theScoreIsFleschs() {
        ReadingEase ease = ReadingEase.of("The cat sat on the mat. It was 3.5 cm high.");
        // By hand: 12 words (3.5 counts as two), 2 sentences, 12 syllables.
        assertThat(ease).isEqualTo(new ReadingEase(12, 2, 12));
        assertThat(ease.score()).isCloseTo(206.835 - 1.015 * 6 - 84.6, within(1e-9));
    }

    @Test
    void everyLessonReadsEasilyEnough() throws IOException {
        Map<LessonKey, Lesson> lessons = ContentLoader.load(
                        new ContentSource(Optional.of(".")).read(), Catalogue.standard())
                .content()
                .lessons();
        List<String> lines = new ArrayList<>();
        lines.add("Flesch reading ease (1948), words, words per sentence, lesson");
        lessons.forEach((key, lesson) -> {
            ReadingEase ease = ReadingEase.of(lesson);
            lines.add(String.format(
                    Locale.ROOT,
                    "%5.1f %5d %5.1f  %s",
                    ease.score(),
                    ease.words(),
                    (double) ease.words() / ease.sentences(),
                    key.id()));
        });
        Files.write(Path.of("target", "reading-ease.txt"), lines);
        System.out.println(String.join("\n", lines));
        assertThat(lessons.values())
                .allSatisfy(lesson -> assertThat(ReadingEase.of(lesson).score())
                        .as(lesson.key().id())
                        .isGreaterThan(HARDEST));
    }
}
