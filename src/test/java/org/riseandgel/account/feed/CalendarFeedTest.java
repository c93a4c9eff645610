package org.riseandgel.account.feed;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.platform.sql.Sql;

/** The secret address of a person's dates: shown once, replaced, ended. */
@QuarkusTest
class CalendarFeedTest {
    @Inject
    Sql sql;

    @AfterEach
    void reset() {
        sql.change("UPDATE person SET disabled_at = NULL");
    }

    @Test
    void theAddressIsReadWithoutSigningInAndIsACalendar() {
        String address = make(SignedIn.asPerson(DemoPeople.ANOUK));
        Answer feed = Browserless.anonymous().get(address);
        assertThat(feed.status()).isEqualTo(200);
        assertThat(feed.header("Content-Type")).isEqualTo("text/calendar;charset=UTF-8");
        assertThat(feed.header("Cache-Control")).isEqualTo("no-store");
        assertThat(Biweekly.parse(feed.body()).first()).isNotNull();
    }

    @Test
    void aNewAddressEndsTheOneBefore() {
        Browserless owner = SignedIn.asPerson(DemoPeople.BASTIAN);
        String first = make(owner);
        String second = make(owner);
        assertThat(owner.get("/account/calendar").body()).doesNotContain(second);
        assertThat(Browserless.anonymous().get(first).status()).isEqualTo(404);
        assertThat(Browserless.anonymous().get(second).status()).isEqualTo(200);
        owner.post("/account/calendar/end");
        assertThat(Browserless.anonymous().get(second).status()).isEqualTo(404);
    }

    @Test
    void aDisabledPersonsAddressAndAnInventedOneAreNotFound() {
        String address = make(SignedIn.asPerson(DemoPeople.CELESTE));
        sql.change("UPDATE person SET disabled_at = now() WHERE id = ?", DemoPeople.CELESTE);
        assertThat(Browserless.anonymous().get(address).status()).isEqualTo(404);
        assertThat(Browserless.anonymous()
                        .get("/calendar/" + "a".repeat(43) + ".ics")
                        .status())
                .isEqualTo(404);
    }

    private static String make(Browserless owner) {
        Answer made = owner.post("/account/calendar");
        assertThat(made.status()).as(made.toString()).isEqualTo(200);
        String address = made.page().selectFirst("code.secret").text();
        return address.replaceFirst("^https?://[^/]+", "");
    }
}
