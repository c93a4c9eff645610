package org.riseandgel.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.riseandgel.core.quantity.DecimalMark;

/** What the special blocks of a lesson become on the page. */
class BodyWriterTest {
    private static final Lesson LESSON = SampleCourse.sound().firstLesson();
    private static final Document POINT = Jsoup.parse(LESSON.body().html(DecimalMark.POINT));
    private static final Document COMMA = Jsoup.parse(LESSON.body().html(DecimalMark.COMMA));

    @Test
    void aFigureIsAnImageWithTitleTextAndCaption() {
        Element svg = POINT.selectFirst("figure > svg");
        assertThat(svg.attr("role")).isEqualTo("img");
        assertThat(POINT.getElementById(svg.attr("aria-labelledby")).text()).isEqualTo("A cup <cut> open");
        assertThat(POINT.getElementById(svg.attr("aria-describedby")).text()).isEqualTo("A cup, wider at the top.");
        assertThat(svg.attr("viewBox")).isEqualTo("0 0 640 360");
        assertThat(svg.select("path.f-line").attr("d")).isEqualTo("M10 10 L20 200 L90 200 L100 10");
        assertThat(svg.select("text").text()).isEqualTo("a & b");
        assertThat(POINT.select("figcaption").text()).isEqualTo("A cup <cut> open");
        assertThat(svg.outerHtml()).doesNotContain("<!--");
    }

    @Test
    void aWorkedExampleShowsInputsStepsAndResults() {
        Element worked = POINT.selectFirst("section.worked");
        assertThat(worked.select(".worked-title").text()).isEqualTo("One cup of foam");
        assertThat(worked.select("dl.facts dd").eachText()).contains("8.4 g", "33.9 g", "100 mL", "1.02 g/mL");
        assertThat(worked.select("ol.working li")).isNotEmpty();
        assertThat(worked.select("ol.working li").last().select("span").eachAttr("class"))
                .containsExactly("step-label", "step-formula", "step-numbers", "step-value");
        assertThat(worked.select("dl.results dd")).hasSize(2);
    }

    @Test
    void theWorkingEndsWithTheLastResultThatIsShown() {
        Lesson only = SampleCourse.sound()
                .changed(SampleCourse.LESSON, "results: [foamDensity, expansion]", "results: [foamDensity]")
                .firstLesson();
        Document page = Jsoup.parse(only.body().html(DecimalMark.POINT));
        List<String> all = POINT.select("section.worked .step-label").eachText();
        List<String> few = page.select("section.worked .step-label").eachText();
        assertThat(few).isNotEmpty().hasSizeLessThan(all.size()).isEqualTo(all.subList(0, few.size()));
        assertThat(page.select("section.worked dl.results dd")).hasSize(1);
    }

    @Test
    void theNumbersAreThoseOfTheArithmetic() {
        // (33.9 g − 8.4 g) ÷ 100 mL = 0.255 g/mL and 1.02 ÷ 0.255 = 4, by hand. Half a unit of the last figure shown.
        List<String> results = POINT.select("section.worked dl.results dd").eachText();
        assertThat(Double.parseDouble(results.get(0).split("[\\s\u00a0]")[0])).isCloseTo(0.255, within(0.0005));
        assertThat(Double.parseDouble(results.get(1))).isCloseTo(4, within(0.005));
    }

    @Test
    void numbersInTheTextAreThoseOfTheWorkedExample() {
        List<String> results = POINT.select("section.worked dl.results dd").eachText();
        assertThat(POINT.select("span.worked-number").eachText()).isEqualTo(results);
        assertThat(POINT.text()).doesNotContain("{{");
    }

    @Test
    void theSchoolsDecimalMarkIsUsedThroughout() {
        assertThat(COMMA.select("dl.facts dd").eachText()).contains("8,4 g", "1,02 g/mL");
        assertThat(COMMA.select("section.worked, span.worked-number").text()).doesNotContainPattern("\\d\\.\\d");
    }

    @Test
    void aCautionHasItsWordItsTitleAndItsText() {
        Element caution = POINT.selectFirst("section.caution");
        assertThat(caution.attr("aria-label")).isEqualTo("CAUTION: Splashes & drops");
        assertThat(caution.classNames()).containsExactlyInAnyOrder("caution", "caution-level");
        assertThat(caution.select(".caution-word").text()).isEqualTo("CAUTION");
        assertThat(caution.select(".caution-word svg[aria-hidden=true]")).hasSize(1);
        assertThat(caution.select(".caution-title").text()).isEqualTo("Splashes & drops");
        assertThat(caution.select(".caution-body em").text()).isEqualTo("sting");
    }

    @Test
    void aNoticeHasNoTriangle() {
        Lesson notice = SampleCourse.sound()
                .changed(SampleCourse.LESSON, "word: CAUTION", "word: NOTICE")
                .firstLesson();
        assertThat(Jsoup.parse(notice.body().html(DecimalMark.POINT)).select(".caution.notice svg"))
                .isEmpty();
    }

    @Test
    void anAsideOpensOnDemand() {
        Element aside = POINT.selectFirst("details.aside");
        assertThat(aside.select("summary").text()).isEqualTo("Why");
        assertThat(aside.select("strong").text()).isEqualTo("light");
    }

    @Test
    void whomToCallIsTheSchoolsOwnAndIsSaidToBeMissingWhereItIs() {
        LessonBody body = SampleCourse.sound()
                .changed(SampleCourse.LESSON, "Foam could *sting* in an eye.", "\"Call: {{school.emergency}}.\"")
                .firstLesson()
                .body();
        assertThat(call(body.html(DecimalMark.POINT, "Ada <b> 12"))).isEqualTo("Ada <b> 12");
        assertThat(call(body.html(DecimalMark.POINT, "Ben 34"))).isEqualTo("Ben 34");
        assertThat(call(body.html(DecimalMark.POINT, " "))).startsWith("nobody is entered yet: the office has to");
        assertThat(call(body.html(DecimalMark.POINT))).contains("public emergency number");
    }

    private static String call(String html) {
        return Jsoup.parse(html).select(".caution-body strong.emergency").text();
    }

    @Test
    void tablesScrollByThemselves() {
        Element table = POINT.selectFirst("div.scroller > table");
        assertThat(table.parent().attr("role")).isEqualTo("region");
        assertThat(table.parent().attr("tabindex")).isEqualTo("0");
        assertThat(table.parent().attr("aria-label")).isNotEmpty();
        assertThat(table.select("th").eachAttr("scope")).containsExactly("col", "col");
    }

    @Test
    void linksLeadToOurPages() {
        assertThat(POINT.select("a").eachAttr("href"))
                .containsExactly(
                        "/practice#rising",
                        "/bench/foam-density",
                        "#part-the-cup",
                        "/course/01-foam/02-standing",
                        "/course/01-foam/02-standing#part-the-cup");
        assertThat(POINT.select("h2").attr("id")).isEqualTo("part-the-cup");
    }
}
