package org.riseandgel.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.Outcome;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberReader;
import org.riseandgel.core.quantity.Quantity;
import org.riseandgel.core.quantity.Reading;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.platform.content.ContentSource;

/** The lessons and exercises of this project themselves. */
class RealCourseTest {
    private static final Catalogue CATALOGUE = Catalogue.standard();
    private static final ContentLoader.Loaded REAL =
            ContentLoader.load(new ContentSource(Optional.of(".")).read(), CATALOGUE);

    @Test
    void hasNoProblem() {
        assertThat(REAL.problems()).isEmpty();
        assertThat(REAL.content().lessons()).isNotEmpty();
        assertThat(REAL.content().exercises().all()).isNotEmpty();
    }

    /** Guards the writer: what stands on the page is read back and held against a fresh run of the catalogue. */
    @TestFactory
    Stream<DynamicTest> everyWorkedNumberOnThePageIsTheCatalogues() {
        return REAL.content().lessons().values().stream().flatMap(lesson -> Stream.of(DecimalMark.values())
                .map(mark ->
                        DynamicTest.dynamicTest(lesson.key().id() + " " + mark, () -> numbersAreRight(lesson, mark))));
    }

    private static void numbersAreRight(Lesson lesson, DecimalMark mark) {
        Document page = Jsoup.parse(lesson.body().html(mark));
        List<Element> shown = page.select("section.worked");
        assertThat(shown).hasSameSizeAs(lesson.body().worked());
        for (int i = 0; i < shown.size(); i++) {
            Worked worked = lesson.body().worked().get(i);
            Outcome outcome = CATALOGUE.run(worked.calculation(), worked.given());
            assertThat(shown.get(i).select("dl.facts dd")).allMatch(Element::hasText);
            resultsAreRight(worked, outcome, shown.get(i), mark);
            stepsAreRight(worked, outcome, shown.get(i), mark);
        }
    }

    private static void resultsAreRight(Worked worked, Outcome outcome, Element shown, DecimalMark mark) {
        List<String> texts = shown.select("dl.results dd").eachText();
        assertThat(texts).hasSameSizeAs(worked.results());
        for (int i = 0; i < texts.size(); i++) {
            String name = worked.results().get(i);
            double readability = worked.result(name).readability();
            Unit unit = Optional.ofNullable(worked.result(name).unit())
                    .orElseGet(() -> outcome.units().get(name));
            // Rounded to the readability of the instrument, or to five figures where no instrument is named.
            double right = outcome.results().get(name).in(unit);
            double half = readability > 0 ? readability / 2 : Math.abs(right) * 0.5e-4;
            isNear(texts.get(i), outcome.results().get(name), unit, half, mark);
        }
    }

    private static void stepsAreRight(Worked worked, Outcome outcome, Element shown, DecimalMark mark) {
        List<String> texts = shown.select("ol.working .step-value").eachText();
        assertThat(texts).isNotEmpty().hasSizeLessThanOrEqualTo(outcome.steps().size());
        assertThat(outcome.steps().subList(texts.size(), outcome.steps().size()))
                .extracting(Outcome.Step::id)
                .doesNotContainAnyElementsOf(worked.results());
        for (int i = 0; i < texts.size(); i++) {
            Outcome.Step step = outcome.steps().get(i);
            // A step is written to five figures.
            isNear(
                    texts.get(i),
                    step.value(),
                    step.unit(),
                    Math.abs(step.value().in(step.unit())) * 0.5e-4,
                    mark);
        }
    }

    private static void isNear(String text, Quantity right, Unit unit, double tolerance, DecimalMark mark) {
        Reading reading = NumberReader.of(mark).read(text);
        assertThat(reading.ok()).as("“%s” %s", text, reading.message()).isTrue();
        // a step of temperature is written like a temperature
        assertThat(reading.typedUnit().orElse(Unit.ONE).symbol()).as(text).isEqualTo(unit.symbol());
        double distance = Math.abs(reading.value().toDouble() - right.in(unit));
        assertThat(distance).as("%s against %s", text, right).isLessThanOrEqualTo(tolerance * (1 + 1e-9));
    }

    /** Every word of the glossary is linked from a lesson; one that nobody meets explains nothing. */
    @Test
    void everyWordOfTheGlossaryIsUsed() {
        Set<Term> used = REAL.content().lessons().values().stream()
                .flatMap(lesson -> lesson.body().terms().stream())
                .collect(Collectors.toSet());
        assertThat(REAL.content().glossary().terms()).isNotEmpty();
        assertThat(REAL.content().glossary().terms())
                .filteredOn(term -> !used.contains(term))
                .extracting(Term::term)
                .isEmpty();
    }

    /** A figure without words, and a link that leads nowhere, would be a problem of loading; the page shows it too. */
    @Test
    void everyFigureHasWordsAndEveryLinkLeadsSomewhere() {
        Set<String> words = GlossaryView.of(REAL.content()).letters().stream()
                .flatMap(letter -> letter.words().stream())
                .map(GlossaryView.Line::anchor)
                .collect(Collectors.toSet());
        for (Lesson lesson : REAL.content().lessons().values()) {
            Document page = Jsoup.parse(lesson.body().html(DecimalMark.POINT));
            assertThat(page.select("figure svg")).isNotEmpty().allSatisfy(svg -> {
                assertThat(page.getElementById(svg.attr("aria-labelledby")).text())
                        .isNotBlank();
                assertThat(page.getElementById(svg.attr("aria-describedby")).text())
                        .hasSizeGreaterThan(20);
            });
            for (Element link : page.select("a.term")) {
                assertThat(words)
                        .contains(link.attr("href").substring(link.attr("href").indexOf('#') + 1));
            }
            assertThat(page.select("a:not(.term)").eachAttr("href"))
                    .allMatch(address -> address.matches("#.+|/(course|practice|bench).*"));
        }
    }

    /** Numbers in the running text come from a worked example of the same lesson. */
    @Test
    void everyNumberInTheTextIsAResultOfThatLesson() {
        for (Map.Entry<LessonKey, Lesson> lesson : REAL.content().lessons().entrySet()) {
            List<String> possible = new ArrayList<>();
            for (Worked worked : lesson.getValue().body().worked()) {
                Outcome outcome = worked.run();
                worked.calculation().results().stream()
                        .filter(result -> outcome.results().containsKey(result.name()))
                        .forEach(result -> possible.add(Worked.written(outcome, result, DecimalMark.COMMA)
                                .replace('\u00a0', ' ')));
            }
            Document page = Jsoup.parse(lesson.getValue().body().html(DecimalMark.COMMA));
            assertThat(possible).containsAll(page.select("span.worked-number").eachText());
            assertThat(page.text()).doesNotContain("{{");
        }
    }
}
