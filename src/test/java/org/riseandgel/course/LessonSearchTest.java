package org.riseandgel.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.platform.content.ContentSource;

/** Words are found whatever their case and accents, and no question takes long. */
class LessonSearchTest {
    private static final LessonSearch SAMPLE =
            SampleCourse.sound().load().content().search();

    @Test
    void findsTheBeginningOfAWordWhateverItsCaseAndAccents() {
        for (String asked : List.of("whisk", "WHISK", "whi", "whísk", "  whisk!?  ", "ｗｈｉｓｋ")) {
            assertThat(SAMPLE.find(asked)).as(asked).isNotEmpty().allSatisfy(found -> assertThat(asked(found))
                    .contains("whisk"));
        }
        assertThat(SAMPLE.find("hisk")).isEmpty();
    }

    @Test
    void everyWordMustBeThere() {
        assertThat(SAMPLE.find("foam whisk")).isNotEmpty();
        assertThat(SAMPLE.find("foam crocodile")).isEmpty();
    }

    @Test
    void nothingAskedFindsNothing() {
        for (String asked : List.of("", "   ", "?!", "—")) {
            assertThat(SAMPLE.find(asked)).isEmpty();
        }
    }

    @Test
    void aTitleComesFirstAndLeadsToTheBeginning() {
        List<LessonSearch.Found> found = SAMPLE.find("standing");
        assertThat(found.get(0).lesson()).isEqualTo("Standing");
        assertThat(found.get(0).address()).isEqualTo("/course/01-foam/02-standing");
        assertThat(found.get(0).heading()).isEmpty();
    }

    @Test
    void aHeadingLeadsToItsPart() {
        LessonSearch.Found found = SAMPLE.find("cup").get(0);
        assertThat(found.heading()).isEqualTo("The cup");
        assertThat(found.address()).endsWith("#part-the-cup");
    }

    @Test
    void thePiecesOfAnExcerptMakeUpPartOfTheText() {
        LessonSearch.Found found = SAMPLE.find("whisk").get(0);
        String whole = found.excerpt().stream().map(LessonSearch.Piece::text).collect(Collectors.joining());
        assertThat(whole).contains("Foam rises while the whisk turns.").endsWith(" …");
        assertThat(whole.length()).isLessThan(400);
    }

    /** The worst questions somebody can send are answered at once: a hundred of them in less than ten seconds. */
    @Test
    void hostileQuestionsTakeNoTime() {
        LessonSearch real = ContentLoader.load(new ContentSource(Optional.of(".")).read(), Catalogue.standard())
                .content()
                .search();
        Instant start = Instant.now();
        for (int i = 0; i < 25; i++) {
            for (String asked : List.of("a".repeat(100), "a ".repeat(50), "(a+)+$", "e t a o i n s h")) {
                real.find(asked);
            }
        }
        assertThat(Duration.between(start, Instant.now())).isLessThan(Duration.ofSeconds(10));
        assertThat(real.find("whisk")).isNotEmpty();
    }

    private static List<String> asked(LessonSearch.Found found) {
        return found.excerpt().stream()
                .filter(LessonSearch.Piece::asked)
                .map(LessonSearch.Piece::text)
                .toList();
    }
}
