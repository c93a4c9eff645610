package org.riseandgel.sitting;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.MutableClock;
import org.riseandgel.platform.sql.Sql;

/** A check from beginning to result, as the person who sits it meets it. */
@QuarkusTest
class SittingPagesTest {
    private static final String CHECK = "whipping-check";
    private static final int ITEMS = 5;

    @Inject
    SittingStore store;

    @Inject
    KeptDraws draws;

    @Inject
    Sql sql;

    Sitter sitter;

    @BeforeEach
    void signIn() {
        sitter = Sitter.fresh(store, draws);
    }

    @AfterEach
    void clock() {
        MutableClock.reset();
    }

    @Test
    void fromTheListToTheResult() {
        assertThat(sitter.browser.get("/checks").page().select("a[href=/checks/" + CHECK + "]"))
                .isNotEmpty();
        String rules = sitter.browser.get("/checks/" + CHECK).page().text();
        assertThat(rules)
                .contains(
                        "5 items",
                        "no time limit",
                        "no hints",
                        "4 of 5 right",
                        "no critical item wrong",
                        "one try a day");

        UUID sitting = sitter.begin(CHECK);
        Document first = sitter.browser
                .get("/sittings/" + sitting + "/items/next")
                .follow()
                .page();
        assertThat(first.select("h1").text()).isEqualTo("Item 1 of 5");

        Answer saved = sitter.save(sitting, 1, sitter.right(sitting, 1));
        assertThat(saved.location()).isEqualTo("/sittings/" + sitting + "/items/2?saved=1");
        assertThat(saved.follow().page().select("[role=status]").text()).startsWith("Item 1 is saved: ");
        assertThat(overview(sitting).text()).contains("4 of 5 are still open");

        sitter.answerAll(sitting, 0);
        Document all = overview(sitting);
        assertThat(all.text()).contains("Every item has an answer");
        assertThat(all.select("tbody tr")).hasSize(ITEMS);
        Document confirm =
                sitter.browser.get("/sittings/" + sitting + "/hand-in").page();
        assertThat(confirm.text()).contains("All 5 items have an answer", "nothing can be changed");

        MutableClock.advance(Duration.ofMinutes(9));
        Document result = sitter.handIn(sitting).follow().page();
        assertThat(result.select(".verdict-word").text()).isEqualTo("Passed");
        assertThat(result.select(".verdict").text()).contains("5 of 5; 4 were needed", "9 min");
        assertThat(result.select("section.panel")).hasSize(ITEMS);
        assertThat(result.select("section.panel details")).hasSize(ITEMS);

        Document sheet = sitter.browser.get("/checks/" + CHECK).page();
        assertThat(sheet.select("tbody td .state").text()).isEqualTo("passed");
        assertThat(sheet.text()).contains("Today’s try is used");
        Answer again = sitter.tryToBegin(CHECK);
        assertThat(again.status()).isEqualTo(422);
        assertThat(again.page().select(".error-summary").text()).contains("Today’s try is used");
    }

    private Document overview(UUID sitting) {
        return sitter.browser.get("/sittings/" + sitting).page();
    }

    @Test
    void anAnswerCanBeChangedUntilHandingInAndEachSaveHasItsTime() {
        UUID sitting = sitter.begin(CHECK);
        int number = sitter.typedFrom(sitting, 2);
        sitter.save(sitting, number, sitter.wrong(sitting, number));
        MutableClock.advance(Duration.ofSeconds(30));
        String right = sitter.right(sitting, number);
        sitter.save(sitting, number, right);
        StoredItem item = sitter.stored(sitting).item(number).orElseThrow();
        assertThat(item.typed()).isEqualTo(right);
        assertThat(item.saves()).isEqualTo(2);
        assertThat(sql.list(
                        "SELECT saved_at FROM sitting_save WHERE sitting_id = ? AND number = ? ORDER BY nth",
                        row -> row.instant("saved_at"),
                        sitting,
                        number))
                .hasSize(2)
                .satisfies(times -> assertThat(Duration.between(times.get(0), times.get(1)))
                        .isGreaterThanOrEqualTo(Duration.ofSeconds(30)));
        assertThat(sitter.browser
                        .get("/sittings/" + sitting + "/items/" + number)
                        .page()
                        .selectFirst("#answer")
                        .attr("value"))
                .isEqualTo(right);

        sitter.handIn(sitting);
        Answer late = sitter.save(sitting, number, sitter.wrong(sitting, number));
        assertThat(late.location()).isEqualTo("/sittings/" + sitting + "#item-" + number);
        assertThat(sitter.stored(sitting).item(number).orElseThrow().typed()).isEqualTo(right);
    }

    @Test
    void whatCannotBeReadIsAskedAgainAndChangesNothing() {
        UUID sitting = sitter.begin(CHECK);
        int number = sitter.typedFrom(sitting, 1);
        String right = sitter.right(sitting, number);
        sitter.save(sitting, number, right);
        for (String unclear : List.of("", "about so much", "1,2,3 4", "x".repeat(400))) {
            Answer again = sitter.save(sitting, number, unclear);
            assertThat(again.status()).as(unclear).isEqualTo(422);
            Document page = again.page();
            assertThat(page.selectFirst("#answer").attr("value")).isEqualTo(unclear);
            assertThat(page.select(".error-summary a[href=#answer]").text())
                    .isNotEmpty()
                    .isEqualTo(page.select("#answer-error").text());
        }
        assertThat(sitter.stored(sitting).item(number).orElseThrow())
                .extracting(StoredItem::typed, StoredItem::saves)
                .containsExactly(right, 1);
        assertThat(sitter.save(sitting, 99, "1").status()).isEqualTo(404);
    }

    @Test
    void whatIsLeftOpenIsNotRight() {
        UUID sitting = sitter.begin(CHECK);
        for (int number = 1; number <= 3; number++) {
            sitter.save(sitting, number, sitter.right(sitting, number));
        }
        assertThat(sitter.browser
                        .get("/sittings/" + sitting + "/hand-in")
                        .page()
                        .text())
                .contains("2 of 5 items are still open");
        Document result = sitter.handIn(sitting).follow().page();
        assertThat(result.select(".verdict-word").text()).isEqualTo("Not passed");
        assertThat(result.select("section.panel h3").eachText())
                .filteredOn(title -> title.endsWith("Left open"))
                .hasSize(2);
        assertThat(sitter.stored(sitting).result())
                .extracting(StoredSitting.Result::right, StoredSitting.Result::passed)
                .containsExactly(3, false);
    }

    @Test
    void itGoesOnAtAnotherComputerAndOnAnotherDay() {
        UUID sitting = sitter.begin(CHECK);
        sitter.save(sitting, 1, sitter.right(sitting, 1));
        MutableClock.advance(Duration.ofDays(1));
        sitter.changeComputer();
        assertThat(sitter.browser.get("/checks").page().select("a[href=/sittings/" + sitting + "]"))
                .hasSize(1);
        assertThat(sitter.begin(CHECK)).isEqualTo(sitting);
        assertThat(sitter.browser.get("/sittings/" + sitting + "/items/next").location())
                .endsWith("/items/2");
        sitter.answerAll(sitting, 0);
        Document result = sitter.handIn(sitting).follow().page();
        assertThat(result.select(".verdict-word").text()).isEqualTo("Passed");
        assertThat(result.select(".verdict").text()).contains("1 d 0 h");
        // It counts for the day on which it was begun, so today's try is still there.
        UUID second = sitter.begin(CHECK);
        assertThat(second).isNotEqualTo(sitting);
    }

    @Test
    void twoSittingsHaveLittleInCommon() {
        UUID first = sitter.sit(CHECK, 0);
        MutableClock.advance(Duration.ofDays(1));
        sitter.changeComputer();
        UUID second = sitter.sit(CHECK, 0);
        List<String> seeds = sitter.stored(first).items().stream()
                .map(item -> item.exercise() + item.seed())
                .toList();
        assertThat(sitter.stored(second).items())
                .hasSize(ITEMS)
                .noneMatch(item -> seeds.contains(item.exercise() + item.seed()));
    }

    @Test
    void anotherPersonsSittingIsNotFound() {
        UUID sitting = sitter.begin(CHECK);
        Sitter stranger = Sitter.fresh(store, draws);
        String address = "/sittings/" + sitting;
        for (String page : List.of("", "/items/next", "/items/1", "/hand-in")) {
            assertThat(stranger.browser.get(address + page).status()).as(page).isEqualTo(404);
        }
        assertThat(stranger.save(sitting, 1, "1 g").status()).isEqualTo(404);
        assertThat(stranger.handIn(sitting).status()).isEqualTo(404);
        assertThat(sitter.stored(sitting).isOpen()).isTrue();
        assertThat(stranger.browser.get("/checks/no-such-check").status()).isEqualTo(404);
        assertThat(stranger.tryToBegin("no-such-check").status()).isEqualTo(404);
    }
}
