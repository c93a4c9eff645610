package org.riseandgel.account.signin;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.MutableClock;
import org.riseandgel.SignedIn;
import org.riseandgel.account.TestPeople;
import org.riseandgel.platform.sql.Sql;

@QuarkusTest
class SignInEndsTest {
    @Inject
    Sql sql;

    @AfterEach
    void realTime() {
        MutableClock.reset();
    }

    @Test
    void endsAfterHalfAnHourWithoutUse() {
        Browserless browser = SignedIn.as("apprentice");
        MutableClock.advance(Duration.ofMinutes(29));
        assertThat(browser.get("/account").status()).isEqualTo(200);
        MutableClock.advance(Duration.ofMinutes(29));
        assertThat(browser.get("/account/still-here").status()).isEqualTo(204);
        MutableClock.advance(Duration.ofMinutes(30));
        assertThat(browser.get("/account").location()).isEqualTo("/sign-in?next=%2Faccount");
    }

    @Test
    void endsAfterTwelveHoursHoweverBusy() {
        Browserless browser = SignedIn.as("apprentice");
        for (int minutes = 0; minutes < 12 * 60 - 20; minutes += 20) {
            assertThat(browser.get("/account").status()).isEqualTo(200);
            MutableClock.advance(Duration.ofMinutes(20));
        }
        assertThat(browser.get("/account").status()).isEqualTo(200);
        MutableClock.advance(Duration.ofMinutes(20));
        assertThat(browser.get("/account").status()).isEqualTo(303);
    }

    @Test
    void beingSeenIsWrittenAtMostOnceAMinute() {
        TestPeople.Added person = TestPeople.settled("apprentice");
        Browserless browser = TestPeople.signIn(person);
        Instant opened = lastSeen(person);
        MutableClock.advance(Duration.ofSeconds(50));
        browser.get("/account");
        assertThat(lastSeen(person)).isEqualTo(opened);
        MutableClock.advance(Duration.ofSeconds(11));
        browser.get("/account");
        assertThat(lastSeen(person)).isAfter(opened.plusSeconds(60));
    }

    @Test
    void aPersonDisabledByAnotherNodeIsOutWithinFiveSeconds() throws InterruptedException {
        TestPeople.Added person = TestPeople.settled("apprentice");
        Browserless browser = TestPeople.signIn(person);
        assertThat(browser.get("/account").status()).isEqualTo(200);
        sql.change("UPDATE person SET disabled_at = ? WHERE id = ?", Instant.now(), UUID.fromString(person.id()));
        assertThat(browser.get("/account/still-here").status())
                .as("the table is not asked at every request")
                .isEqualTo(204);
        Thread.sleep(5_000);
        assertThat(browser.get("/account").status()).isEqualTo(303);
    }

    @Test
    void aPersonDisabledHereIsOutAtOnceAndCannotComeBack() {
        TestPeople.Added person = TestPeople.settled("apprentice");
        Browserless browser = TestPeople.signIn(person);
        Browserless office = SignedIn.as("office");
        assertThat(office.post("/office/people/" + person.id() + "/disable").status())
                .isEqualTo(303);
        assertThat(browser.get("/account").status()).isEqualTo(303);
        assertThat(Browserless.anonymous()
                        .signIn(person.signInName(), TestPeople.PASSWORD)
                        .status())
                .isEqualTo(422);
        assertThat(office.post("/office/people/" + person.id() + "/enable").status())
                .isEqualTo(303);
        assertThat(browser.get("/account").status())
                .as("the old sign-in stays ended")
                .isEqualTo(303);
        TestPeople.signIn(person);
    }

    @Test
    void changingThePasswordEndsTheOtherSignInsOnly() {
        TestPeople.Added person = TestPeople.settled("apprentice");
        Browserless here = TestPeople.signIn(person);
        Browserless elsewhere = TestPeople.signIn(person);
        String next = "copper thread beside rain";
        Answer changed = here.post(
                "/account/password",
                Map.of("current", TestPeople.PASSWORD, "new-password", next, "new-password-again", next));
        assertThat(changed.location()).isEqualTo("/account?done=password");
        assertThat(here.get("/account").status()).isEqualTo(200);
        assertThat(elsewhere.get("/account").status()).isEqualTo(303);
        assertThat(Browserless.anonymous()
                        .signIn(person.signInName(), TestPeople.PASSWORD)
                        .status())
                .isEqualTo(422);
        assertThat(Browserless.anonymous().signIn(person.signInName(), next).status())
                .isEqualTo(303);
    }

    @Test
    void ownSignInsCanBeSeenAndEndedOneByOne() {
        TestPeople.Added person = TestPeople.settled("apprentice");
        Browserless here = TestPeople.signIn(person);
        Browserless elsewhere = TestPeople.signIn(person);
        List<String> ends =
                here.get("/account").page().select("form[action$=/end]").eachAttr("action");
        assertThat(ends).hasSize(1);
        assertThat(SignedIn.as("apprentice").post(ends.get(0)).status())
                .as("another person's sign-in")
                .isEqualTo(404);
        assertThat(elsewhere.get("/account").status()).isEqualTo(200);
        assertThat(here.post(ends.get(0)).location()).isEqualTo("/account?done=ended");
        assertThat(elsewhere.get("/account").status()).isEqualTo(303);
    }

    @Test
    void theTableHoldsNoIdThatOpensADoor() {
        Browserless browser = SignedIn.as("apprentice");
        String id = browser.cookie("rg-sign-in").orElseThrow();
        assertThat(sql.any("SELECT 1 FROM sign_in WHERE position(convert_to(?, 'UTF8') in id_hash) > 0", id))
                .isFalse();
        assertThat(sql.any("SELECT 1 FROM sign_in WHERE id_hash = sha256(convert_to(?, 'UTF8'))", id))
                .isTrue();
    }

    private Instant lastSeen(TestPeople.Added person) {
        return sql.first(
                        "SELECT max(last_seen_at) AS seen FROM sign_in WHERE person_id = ? AND ended_at IS NULL",
                        row -> row.instant("seen"),
                        UUID.fromString(person.id()))
                .orElseThrow();
    }
}
