package org.riseandgel.account.signin;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.MutableClock;
import org.riseandgel.account.TestPeople;
import org.riseandgel.platform.sql.Sql;

@QuarkusTest
class ThrottleTest {
    private static final AtomicInteger COUNT = new AtomicInteger();

    @Inject
    Throttle throttle;

    @Inject
    Sql sql;

    @BeforeEach
    @AfterEach
    void forgiveAll() {
        MutableClock.reset();
        sql.change("DELETE FROM sign_in_failure");
    }

    @Test
    void afterFiveFailedTriesTheWaitDoublesUpToAMinute() {
        String account = "someone" + COUNT.incrementAndGet();
        for (int i = 0; i < 5; i++) {
            assertThat(throttle.ask(account, "192.0.2.1")).isEmpty();
        }
        for (long wait : new long[] {2, 4, 8, 16, 32, 60, 60}) {
            assertThat(throttle.ask(account, "192.0.2.1")).isEqualTo(OptionalLong.of(wait));
            MutableClock.advance(Duration.ofSeconds(wait));
            assertThat(throttle.ask(account, "192.0.2.1")).isEmpty();
        }
    }

    @Test
    void triesDuringAWaitDoNotLengthenIt() {
        String account = "someone" + COUNT.incrementAndGet();
        IntStream.range(0, 5).forEach(i -> throttle.ask(account, "192.0.2.1"));
        IntStream.range(0, 50).forEach(i -> throttle.ask(account, "192.0.2.1"));
        MutableClock.advance(Duration.ofSeconds(2));
        assertThat(throttle.ask(account, "192.0.2.1")).isEmpty();
    }

    @Test
    void manyTriesAtOnceAreNoWayRound() {
        String account = "someone" + COUNT.incrementAndGet();
        long passed = IntStream.range(0, 40)
                .parallel()
                .filter(i -> throttle.ask(account, "192.0.2.1").isEmpty())
                .count();
        assertThat(passed).isEqualTo(5);
    }

    @Test
    void afterAHundredInARowTheOfficeMustHelp() {
        String account = "someone" + COUNT.incrementAndGet();
        for (int i = 0; i < 100; i++) {
            assertThat(throttle.ask(account, "192.0.2.1")).isEmpty();
            MutableClock.advance(Duration.ofSeconds(60));
        }
        assertThat(throttle.ask(account, "192.0.2.1")).isEqualTo(OptionalLong.of(Long.MAX_VALUE));
        throttle.forget(account);
        assertThat(throttle.ask(account, "192.0.2.1")).isEmpty();
    }

    @Test
    void anAddressThatTriesManyNamesHasToWaitToo() {
        for (int i = 0; i < Throttle.FREE_PER_ADDRESS; i++) {
            assertThat(throttle.ask("name" + i, "192.0.2.7")).isEmpty();
            throttle.failed("192.0.2.7");
        }
        assertThat(throttle.ask("another", "192.0.2.7")).isEqualTo(OptionalLong.of(2));
        assertThat(throttle.ask("another", "192.0.2.8")).isEmpty();
        MutableClock.advance(Duration.ofMinutes(16));
        throttle.failed("192.0.2.9");
        assertThat(sql.any("SELECT 1 FROM sign_in_failure WHERE subject = 'address:192.0.2.7'"))
                .isFalse();
    }

    @Test
    void aClockThatWasSetBackShutsNobodyOut() {
        String account = "someone" + COUNT.incrementAndGet();
        IntStream.range(0, 5).forEach(i -> throttle.ask(account, "192.0.2.1"));
        MutableClock.advance(Duration.ofDays(-2));
        assertThat(throttle.ask(account, "192.0.2.1")).isEmpty();
        assertThat(Throttle.seconds(3, Instant.EPOCH.plusSeconds(100), Instant.EPOCH))
                .isZero();
    }

    @Test
    void theRightPasswordWorksAfterTheWait() {
        TestPeople.Added person = TestPeople.settled("apprentice");
        Browserless browser = Browserless.anonymous();
        for (int i = 0; i < 5; i++) {
            assertThat(browser.signIn(person.signInName(), "surely a wrong one").status())
                    .isEqualTo(422);
        }
        Answer early = browser.signIn(person.signInName(), TestPeople.PASSWORD);
        assertThat(early.status()).isEqualTo(429);
        assertThat(Integer.parseInt(early.header("Retry-After"))).isBetween(1, 2);
        assertThat(early.page().select(".field-error").text()).contains("Nobody is locked out");
        MutableClock.advance(Duration.ofSeconds(3));
        assertThat(browser.signIn(person.signInName(), TestPeople.PASSWORD).status())
                .isEqualTo(303);
        assertThat(sql.any("SELECT 1 FROM sign_in_failure WHERE subject = ?", "account:" + person.signInName()))
                .isFalse();
    }

    @Test
    void unknownNamesAreCountedLikeKnownOnes() {
        Browserless browser = Browserless.anonymous();
        IntStream.range(0, 5).forEach(i -> browser.signIn("no.such.person", "surely a wrong one"));
        assertThat(browser.signIn("no.such.person", "surely a wrong one").status())
                .isEqualTo(429);
    }
}
