package org.riseandgel.course;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.exercise.ExerciseTemplate;

/** Words of the trade, search, the kept place and the preview of exercises, over HTTP and without a script. */
@QuarkusTest
class ReadingPagesTest {
    private static final String LESSON = "/course/04-whipping/01-narrow-containers";
    /** Somebody who has just begun may read the first stage alone. */
    private static final String OPEN_LESSON = "/course/01-bench-and-hazards/09-tools-and-heat";

    @Inject
    CourseContent content;

    @Test
    void everyLinkedWordStandsOnThePageOfWords() {
        Browserless person = SignedIn.as("apprentice");
        Document words = person.get("/course/glossary").page();
        assertThat(words.select(".glossary dt"))
                .hasSameSizeAs(content.current().glossary().terms());
        Document lesson = person.get(LESSON).page();
        assertThat(lesson.select("a.term")).isNotEmpty();
        for (Element link : lesson.select("a.term")) {
            assertThat(link.attr("href")).startsWith("/course/glossary#");
            String anchor = link.attr("href").substring("/course/glossary#".length());
            assertThat(words.getElementById(anchor)).as(anchor).isNotNull();
        }
    }

    @Test
    void searchFindsMarksAndKeepsWhatWasAsked() {
        Browserless person = SignedIn.as("apprentice");
        Document page = person.get("/course/search?words=WHISK").page();
        assertThat(page.select("#words").attr("value")).isEqualTo("WHISK");
        assertThat(page.select(".found li")).isNotEmpty();
        assertThat(page.select(".found mark").eachText()).isNotEmpty().allMatch(word -> word.toLowerCase(Locale.ROOT)
                .startsWith("whisk"));
        for (String address : page.select(".found h2 a").eachAttr("href")) {
            Document found = person.get(address.split("#")[0]).page();
            if (address.contains("#")) {
                assertThat(found.getElementById(address.split("#")[1]))
                        .as(address)
                        .isNotNull();
            }
        }
    }

    @Test
    void aSearchForNothingOrForAnythingHarmsNothing() {
        Browserless person = SignedIn.as("apprentice");
        assertThat(person.get("/course/search").page().select(".found, .empty")).isEmpty();
        assertThat(person.get("/course/search?words=crocodile").page().text()).contains("Nothing found");
        Browserless.Answer hostile = person.get("/course/search?words=%3Cscript%3Ealert(1)%3C/script%3E");
        assertThat(hostile.status()).isEqualTo(200);
        assertThat(hostile.page().select("script:not([src])")).isEmpty();
        assertThat(person.get("/course/search?words=" + "a%20".repeat(500)).status())
                .isEqualTo(200);
    }

    @Test
    void aKeptPlaceIsOfferedUntilTheLessonIsRead() {
        Browserless fintan = SignedIn.asPerson(DemoPeople.FINTAN);
        Lesson lesson =
                content.lesson("01-bench-and-hazards", "09-tools-and-heat").orElseThrow();
        Heading second = lesson.body().headings().get(1);
        Document form = fintan.get(OPEN_LESSON).page();
        assertThat(form.select("[data-keep-place] option").eachAttr("value")).contains(second.anchor());
        assertThat(form.text()).doesNotContain("Go on where you stopped");

        Browserless.Answer kept = fintan.post(OPEN_LESSON + "/place", Map.of("anchor", second.anchor()));

        assertThat(kept.status()).isEqualTo(303);
        assertThat(kept.location()).isEqualTo(OPEN_LESSON + "#" + second.anchor());
        String link = "a[href=" + OPEN_LESSON + "#" + second.anchor() + "]";
        assertThat(fintan.get(OPEN_LESSON).page().select(link).eachText())
                .contains("Go on where you stopped: " + second.words());
        assertThat(fintan.get("/course").page().select(link)).hasSize(1);
        assertThat(fintan.get("/today").page().select(link)).hasSize(1);
        assertThat(SignedIn.asPerson(DemoPeople.ESME).get("/course").page().select(link))
                .isEmpty();

        Heading third = lesson.body().headings().get(2);
        assertThat(fintan.post(OPEN_LESSON + "/place", Map.of("anchor", third.anchor(), "quiet", "yes"))
                        .status())
                .isEqualTo(204);
        assertThat(fintan.get("/course").page().select(link)).isEmpty();
        assertThat(fintan.get("/course").page().select("a[href$=#" + third.anchor() + "]"))
                .hasSize(1);

        fintan.post(OPEN_LESSON + "/read");
        assertThat(fintan.get("/course").page().select("a[href$=#" + third.anchor() + "]"))
                .isEmpty();
        assertThat(fintan.get("/today").page().select("a[href$=#" + third.anchor() + "]"))
                .isEmpty();
    }

    @Test
    void aPlaceThatTheLessonDoesNotHaveIsNotKept() {
        Browserless esme = SignedIn.asPerson(DemoPeople.ESME);
        Browserless.Answer answer = esme.post(LESSON + "/place", Map.of("anchor", "part-nowhere"));
        assertThat(answer.location()).isEqualTo(LESSON);
        assertThat(esme.post(LESSON + "/place", Map.of("anchor", "part-nowhere", "quiet", "yes"))
                        .status())
                .isEqualTo(404);
        assertThat(esme.get(LESSON).page().text()).doesNotContain("Go on where you stopped");
        assertThat(esme.post("/course/04-whipping/99-nothing/place").status()).isEqualTo(404);
    }

    @Test
    void thePreviewListsEveryExerciseAndDrawsTen() {
        Browserless ines = SignedIn.as("instructor");
        Document list = ines.get("/exercises").page();
        List<ExerciseTemplate> all = content.exercises().all();
        assertThat(list.select("tbody a").eachAttr("href"))
                .hasSize(all.size())
                .contains("/exercises/stick-marks-straight-beaker", "/exercises/fault-finding-four-pieces");
        for (String id :
                List.of("stick-marks-straight-beaker", "fault-finding-four-pieces", "process-order-gel-to-oven")) {
            Document page = ines.get("/exercises/" + id).page();
            assertThat(page.select("section.panel h2").eachText())
                    .hasSize(10)
                    .allMatch(title -> title.startsWith("Seed "));
            assertThat(page.select("section.panel details")).hasSizeGreaterThanOrEqualTo(10);
        }
        Document beaker =
                ines.get("/exercises/stick-marks-straight-beaker?from=11").page();
        assertThat(beaker.select("dl.facts dt")).isNotEmpty();
        assertThat(beaker.select("ol.working li")).isNotEmpty();
        assertThat(beaker.select("a.button").eachAttr("href"))
                .contains("/exercises/stick-marks-straight-beaker?from=21");
        assertThat(ines.get("/exercises/stick-marks-straight-beaker?from=abc").status())
                .isEqualTo(200);
        assertThat(ines.get("/exercises/no-such-exercise").status()).isEqualTo(404);
    }
}
