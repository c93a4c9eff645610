package org.riseandgel.sitting;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.MutableClock;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.platform.sql.Sql;

/** After three failed sittings an instructor of that person talks with them; others see nothing of it. */
@QuarkusTest
class TalkPagesTest {
    private static final String CHECK = "whipping-check";

    @Inject
    SittingStore store;

    @Inject
    KeptDraws draws;

    @Inject
    Sql sql;

    @AfterEach
    void clock() {
        MutableClock.reset();
    }

    @Test
    void afterThreeFailedATalkIsNotedAndTheNextCanBeBegun() {
        Sitter sitter = Sitter.fresh(store, draws);
        sql.change(
                "INSERT INTO cohort_member (id, cohort_id, person_id, part, joined_at) VALUES (?, ?, ?, 'learns', now())",
                UUID.randomUUID(),
                DemoPeople.FIRST_COHORT,
                sitter.id);
        UUID last = null;
        for (int day = 0; day < 3; day++) {
            last = sitter.sit(CHECK, 2);
            MutableClock.advance(Duration.ofDays(1));
            sitter.changeComputer();
        }
        Answer refused = sitter.tryToBegin(CHECK);
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().text()).contains("3 sittings in a row did not pass");

        Browserless instructor = SignedIn.as("instructor");
        String address = "/people/" + sitter.id + "/sittings";
        Document page = instructor.get(address).page();
        assertThat(page.text()).contains("A talk comes next");
        assertThat(page.select("tbody tr")).hasSize(3);
        assertThat(instructor.get(address + "/" + last).page().select("section.panel"))
                .hasSize(5);
        Answer empty = instructor.post(address + "/talk", Map.of("check", CHECK, "words", "  "));
        assertThat(empty.status()).isEqualTo(422);
        assertThat(empty.page().select(".error-summary").text()).contains("Write in a sentence");
        Answer tooLong = instructor.post(address + "/talk", Map.of("check", CHECK, "words", "x".repeat(1_001)));
        assertThat(tooLong.status()).isEqualTo(422);
        assertThat(tooLong.page().selectFirst("textarea").text()).hasSize(1_001);
        assertThat(sitter.tryToBegin(CHECK).status()).isEqualTo(422);

        Answer noted =
                instructor.post(address + "/talk", Map.of("check", CHECK, "words", "We marked two sticks together."));
        assertThat(noted.status()).isEqualTo(303);
        assertThat(noted.follow().page().text())
                .contains("We marked two sticks together.", "Ines Calloway")
                .doesNotContain("A talk comes next");
        assertThat(sitter.browser.get("/checks/" + CHECK).page().text()).contains("We marked two sticks together.");
        sitter.begin(CHECK);
    }

    @Test
    void sittingsOfPeopleOneDoesNotTeachAreNotFound() {
        Sitter sitter = Sitter.fresh(store, draws);
        UUID sitting = sitter.sit(CHECK, 0);
        String address = "/people/" + sitter.id + "/sittings";
        Browserless instructor = SignedIn.as("instructor");
        assertThat(instructor.get(address).status()).isEqualTo(404);
        assertThat(instructor.get(address + "/" + sitting).status()).isEqualTo(404);
        assertThat(instructor
                        .post(address + "/talk", Map.of("check", CHECK, "words", "Not mine."))
                        .status())
                .isEqualTo(404);
        assertThat(sitter.browser.get(address).status()).isEqualTo(404);
        assertThat(SignedIn.as("safety-lead").get(address).status()).isEqualTo(200);
        Browserless office = SignedIn.as("office");
        assertThat(office.get(address + "/" + sitting).status()).isEqualTo(200);
        assertThat(office.post(address + "/talk", Map.of("check", CHECK, "words", "Not I."))
                        .status())
                .isEqualTo(404);
    }

    @Test
    void anOpenSittingIsNobodysBusiness() {
        Sitter sitter = Sitter.fresh(store, draws);
        UUID sitting = sitter.begin(CHECK);
        Browserless lead = SignedIn.as("safety-lead");
        String address = "/people/" + sitter.id + "/sittings";
        assertThat(lead.get(address).page().text()).contains("still open");
        assertThat(lead.get(address + "/" + sitting).status()).isEqualTo(404);
    }

    @Test
    void theDemoSchoolHasSittings() {
        Document darius = SignedIn.as("instructor")
                .get("/people/" + DemoPeople.DARIUS + "/sittings")
                .page();
        assertThat(darius.select("tbody tr")).hasSizeGreaterThanOrEqualTo(3);
    }
}
