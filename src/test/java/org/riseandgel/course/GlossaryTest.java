package org.riseandgel.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.riseandgel.course.SampleCourse.LESSON;

import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.riseandgel.core.quantity.DecimalMark;

/** Words of the trade: where lessons link them, and what is said of entries that are wrong. */
class GlossaryTest {
    private static final String FILE = "lessons/glossary.yaml";
    private static final String WORDS =
            """
            terms:
              - { term: foam, also: [foams], means: Gas in thin walls of liquid. }
              - { term: rising whisk, means: Never seen. }
              - term: whisk
                also: [whisks, drill-driven whisk]
                means: What beats air in.
                lesson: 01-foam/02-standing
            """;

    @Test
    void onlyTheFirstUseInEachLessonIsLinked() {
        for (String lesson : List.of("01-rising", "02-standing")) {
            Document page = page(withWords(WORDS), lesson);
            assertThat(page.select("a.term").eachText()).as(lesson).containsExactly("Foam", "whisk");
            assertThat(page.select("a.term").eachAttr("href"))
                    .containsExactly("/course/glossary#term-foam", "/course/glossary#term-whisk");
            assertThat(page.select("a.term").eachAttr("title"))
                    .containsExactly("Gas in thin walls of liquid.", "What beats air in.");
        }
    }

    @Test
    void theLongestWordWinsAndMayRunOverTheEndOfALine() {
        SampleCourse course = withWords(WORDS).changed(LESSON, "Foam rises", "A drill-driven\nwhisk.\n\nFoam rises");
        Document page = page(course, "01-rising");
        assertThat(page.select("a.term").eachText().get(0)).isEqualTo("drill-driven whisk");
        assertThat(page.select("a.term").eachAttr("href"))
                .containsExactly("/course/glossary#term-whisk", "/course/glossary#term-foam");
    }

    @Test
    void linkingLeavesTheTextAsItIs() {
        String without = page(SampleCourse.sound(), "01-rising").text();
        assertThat(page(withWords(WORDS), "01-rising").text()).isEqualTo(without);
    }

    @Test
    void aWordWithinAWordIsNone() {
        String words = "terms:\n  - { term: ris, means: Nothing. }\n  - { term: the, means: An article. }\n";
        assertThat(page(withWords(words), "01-rising").select("a.term").eachText())
                .allMatch(word -> word.equalsIgnoreCase("the"));
    }

    @Test
    void aCourseKnowsWhichOfItsWordsAreUsed() {
        Content content = withWords(WORDS).load().content();
        assertThat(content.lessons().values())
                .allSatisfy(lesson -> assertThat(lesson.body().terms())
                        .extracting(Term::term)
                        .containsExactlyInAnyOrder("foam", "whisk"));
    }

    @Test
    void thePageOfWordsSaysWhereEachIsExplainedAndUsed() {
        GlossaryView view = GlossaryView.of(withWords(WORDS).load().content());
        assertThat(view.letters()).extracting(GlossaryView.Letter::letter).containsExactly("F", "R", "W");
        GlossaryView.Line whisk = view.letters().get(2).words().get(0);
        assertThat(whisk.also()).isEqualTo("whisks, drill-driven whisk");
        assertThat(whisk.explainedIn().title()).isEqualTo("Standing");
        assertThat(whisk.usedIn())
                .extracting(GlossaryView.Reference::address)
                .containsExactly("/course/01-foam/01-rising");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        lesson: 01-foam/02-standing| lesson: 02-standing| 7 terms[3].lesson: Names “02-standing”, which is no lesson; write <stage>/<lesson> as their files are named.
        term: rising whisk,| term: Zeal,| 4 terms[3].term: “whisk” stands after “Zeal”; sort the words by the alphabet.
        also: [foams]| also: [Whisks]| 4 terms[3].term: “whisks” is explained under “foam” already; explain it once.
        means: What beats air in.| mean: x| 4 terms[3].means: Is missing; write “means: …”.
        also: [foams]| also: foams| 2 terms[1].also: Must be a list, one item after each “-”.
        """)
    void aWrongEntryIsTold(String right, String wrong, String report) {
        assertThat(WORDS).contains(right);
        assertThat(withWords(WORDS.replace(right, wrong)).problems()).contains(FILE + ":" + report);
    }

    private static SampleCourse withWords(String words) {
        return SampleCourse.sound().with(FILE, words);
    }

    private static Document page(SampleCourse course, String lesson) {
        ContentLoader.Loaded loaded = course.load();
        assertThat(loaded.problems()).isEmpty();
        LessonBody body =
                loaded.content().lesson("01-foam", lesson).orElseThrow().body();
        return Jsoup.parse(body.html(DecimalMark.POINT));
    }
}
