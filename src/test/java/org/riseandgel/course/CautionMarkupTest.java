package org.riseandgel.course;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.qute.Engine;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.core.quantity.DecimalMark;

/** A caution in a lesson is the same to look at and to hear as one on any other page. */
@QuarkusTest
class CautionMarkupTest {
    @Inject
    Engine engine;

    @ParameterizedTest
    @ValueSource(strings = {"DANGER", "WARNING", "CAUTION", "NOTICE"})
    void aCautionOfALessonEqualsTheTag(String word) {
        Lesson lesson = SampleCourse.sound()
                .changed(SampleCourse.LESSON, "word: CAUTION", "word: " + word)
                .firstLesson();
        String tag = engine.parse(
                        "{#caution word=word title=title}<p>Foam could <em>sting</em> in an eye.</p>{/caution}")
                .data("word", word, "title", "Splashes & drops")
                .render();
        assertThat(shape(lesson.body().html(DecimalMark.POINT)))
                .isEqualTo(shape(tag.replace("& drops", "&amp; drops")));
    }

    private static String shape(String html) {
        Element caution = Jsoup.parse(html).selectFirst("section.caution");
        return caution.html().replaceAll("\\s+", "") + caution.attributes();
    }
}
