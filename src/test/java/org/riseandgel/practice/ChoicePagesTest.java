package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.ChoiceNote;
import org.riseandgel.exercise.DrawnChoice;

/** Practising exercises without numbers through the pages, as a browser without a script sends them. */
@QuarkusTest
class ChoicePagesTest {
    private static final String ONE = "process-order-test-pile";
    private static final String ALL = "fault-finding-coarse-cells";
    private static final String ORDER = "process-order-gel-to-oven";
    private static final String MATCH = "fault-finding-four-pieces";
    private static final List<String> KINDS = List.of(ONE, ALL, ORDER, MATCH);

    @Inject
    DrawStore store;

    @Inject
    Drawings drawings;

    @Inject
    CourseContent content;

    Learner anouk;
    long seed = 20_270_401;

    @BeforeEach
    void signIn() {
        anouk = new Learner(DemoPeople.ANOUK, store, drawings);
    }

    @Test
    void everyKindIsAskedWithWhatABrowserHas() {
        assertThat(asked(ONE).select("input[type=radio][name=answer]")).hasSize(4);
        assertThat(asked(ALL).select("input[type=checkbox][name=answer]")).hasSize(5);
        assertThat(asked(ORDER).select("select[name=answer]")).hasSize(5);
        Document match = asked(MATCH);
        assertThat(match.select("select[name=answer]")).hasSize(4);
        assertThat(match.select("figure.beside svg[role=img][aria-label]")).hasSize(4);
        for (String kind : KINDS) {
            Document page = asked(kind);
            assertThat(page.select("fieldset legend").text()).endsWith("?");
            assertThat(page.select("[name=answer]").eachAttr("id")).doesNotHaveDuplicates();
            assertThat(page.select("select")).allMatch(select -> !page.select("label[for=" + select.id() + "]")
                    .isEmpty());
        }
    }

    @Test
    void rightAndWrongAreStoredAndEveryThingShownIsExplained() {
        for (String kind : KINDS) {
            for (boolean right : List.of(true, false)) {
                UUID draw = draw(kind);
                DrawnChoice drawn = drawn(draw);
                String answer = right ? drawn.right() : drawn.wrong();

                Document page = send(draw, answer).follow().page();

                assertThat(page.select(right ? ".verdict.is-right" : ".verdict.is-wrong"))
                        .as(kind)
                        .hasSize(1);
                assertThat(page.select(".error-summary")).isEmpty();
                List<ChoiceNote> notes = drawn.notes(answer);
                assertThat(page.select(".choice-notes > li")).as(kind).hasSameSizeAs(notes);
                assertThat(notes).allMatch(note -> page.text().contains(note.why()));
                assertThat(page.text()).contains(drawn.line(answer));
                StoredAnswer stored = anouk.stored(draw).answer(0).orElseThrow();
                assertThat(stored.typed()).isEqualTo(answer).isEqualTo(stored.readValue());
                assertThat(stored.verdict()).isEqualTo(right ? "RIGHT" : "WRONG");
                assertThat(anouk.stored(draw).isFinished()).isTrue();
            }
        }
    }

    @Test
    void aNamedMistakeIsNamed() {
        UUID draw = draw(ALL);
        DrawnChoice drawn = drawn(draw);
        String slip = drawn.slip(drawn.wrong()).orElseThrow();
        Document page = send(draw, drawn.wrong()).follow().page();
        assertThat(page.select(".verdict-word").text()).isEqualTo("Not right: " + slip);
        assertThat(anouk.stored(draw).answer(0).orElseThrow().slip()).isEqualTo(slip);
        assertThat(anouk.browser.get("/practice/answers?skill=fault-finding").body())
                .contains(slip);
    }

    @Test
    void whatIsIncompleteIsAskedAgainKeptAndCostsNothing() {
        Map<String, List<List<String>>> incomplete = Map.of(
                ONE, List.of(List.of(), List.of("z"), List.of("a", "b"), List.of("<b>")),
                ALL, List.of(List.of(), List.of("zz"), List.of("9")),
                ORDER,
                        List.of(
                                List.of("1", "2", "-", "3", "4"),
                                List.of("1", "1", "2", "3", "4"),
                                List.of("0", "1", "2", "3", "4")),
                MATCH, List.of(List.of("a", "-", "b", "c"), List.of("a", "b", "c"), List.of("a", "b", "c", "z")));
        incomplete.forEach((kind, tries) -> {
            UUID draw = draw(kind);
            for (List<String> chosen : tries) {
                Browserless.Answer again = send(draw, chosen);
                assertThat(again.status()).as("%s %s", kind, chosen).isEqualTo(422);
                Document page = again.page();
                assertThat(page.select(".error-summary a").attr("href")).isEqualTo("#answer");
                assertThat(page.getElementById("answer")).isNotNull();
                assertThat(page.select(".field-error").text()).isNotBlank();
                assertThat(anouk.stored(draw).answers()).isEmpty();
            }
        });
        UUID draw = draw(ORDER);
        Document page = send(draw, List.of("1", "2", "-", "3", "4")).page();
        assertThat(page.select("option[selected]").eachText()).containsExactly("1", "2", "3", "4");
        assertThat(page.select(".field-error").text()).isEqualTo("Give step c a number from 1 to 5.");
        UUID ticked = draw(ONE);
        assertThat(send(ticked, List.of("a", "c"))
                        .page()
                        .select("input[name=answer][checked]")
                        .eachAttr("value"))
                .containsExactly("a", "c");
    }

    @Test
    void pressedTwiceOneVerdictStands() {
        for (String kind : KINDS) {
            UUID draw = draw(kind);
            DrawnChoice drawn = drawn(draw);
            Browserless.Answer first = send(draw, drawn.wrong());
            Browserless.Answer second = send(draw, drawn.right());
            assertThat(second.location()).as(kind).isEqualTo(first.location());
            assertThat(anouk.stored(draw).answers()).singleElement().satisfies(stored -> assertThat(stored.verdict())
                    .isEqualTo("WRONG"));
        }
    }

    @Test
    void aHintKeepsWhatWasChosen() {
        UUID draw = draw(ALL);
        Browserless.Answer hinted = anouk.browser
                .post("/practice/draws/" + draw + "/hint", Map.of("part", "1"), "answer", List.of("a", "c"))
                .follow();
        assertThat(hinted.page().select("input[name=answer][checked]").eachAttr("value"))
                .containsExactly("a", "c");
        assertThat(hinted.page().select("#hints")).hasSize(1);
    }

    @Test
    void anInstructorSeesTheAnswerInWords() {
        Browserless ines = SignedIn.as("instructor");
        for (String kind : KINDS) {
            UUID draw = draw(kind);
            DrawnChoice drawn = drawn(draw);
            send(draw, drawn.wrong());
            Document page = ines.get("/people/" + DemoPeople.ANOUK + "/answers/" + draw + "/1")
                    .page();
            assertThat(page.select(".choice-notes > li")).as(kind).hasSameSizeAs(drawn.notes(drawn.wrong()));
        }
        assertThat(ines.get("/people/" + DemoPeople.ANOUK + "/answers").status())
                .isEqualTo(200);
    }

    private UUID draw(String exercise) {
        return anouk.drawOf(content.exercises().find(exercise).orElseThrow(), seed++);
    }

    private Document asked(String exercise) {
        return anouk.page(draw(exercise)).page();
    }

    private DrawnChoice drawn(UUID draw) {
        return (DrawnChoice) anouk.drawn(draw);
    }

    /** Sends an answer as the form would: a value for each tick or select. */
    private Browserless.Answer send(UUID draw, String answer) {
        return send(
                draw,
                Arrays.stream(answer.split(" "))
                        .map(one -> one.length() == 2 ? one.substring(1) : one)
                        .toList());
    }

    private Browserless.Answer send(UUID draw, List<String> values) {
        return anouk.browser.post(
                "/practice/draws/" + draw + "/answer", Map.of("part", "1", "sure", "fairly"), "answer", values);
    }
}
