package org.riseandgel.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.FutureTask;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.eclipse.microprofile.config.Config;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.riseandgel.AppProcess;
import org.riseandgel.Browserless;
import org.riseandgel.account.Roles;
import org.riseandgel.account.TestPeople;
import org.riseandgel.clearance.School.Cast;
import org.riseandgel.clearance.rule.Act;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.clearance.rule.Versions;
import org.riseandgel.platform.start.DatabaseProperties;

/**
 * Two packaged programs on one database. One is killed (kill -9) again and again in the middle of grants: whoever was told
 * "granted" is cleared, nobody is by half, and the book holds. Of two grants at one moment at the two, one wins. What one
 * suspends, the door of the other tells at the next question.
 *
 * <p>Three rounds of up to five grants; {@code -Dregister.rounds=50} for more. This test's own program only sets the people up.
 */
@QuarkusTest
class TwoNodesIT {
    private static final int ROUNDS = Integer.getInteger("register.rounds", 3);
    private static final int GRANTS = 5;
    private static final int SPREAD_MILLIS = 200;
    private static final Set<Task> SOME = Set.of(Task.STORE, Task.CLEAN);

    private final Random killTimes = new Random(20_270_304);
    private final List<Cast> waiting = new ArrayList<>();

    @TempDir
    private Path folder;

    @Inject
    School school;

    @Inject
    Scribe scribe;

    @Inject
    SittingsAsEvidence realSittings;

    @Inject
    RegisterBook book;

    @Inject
    PersonRecord records;

    @Inject
    Config config;

    private TestPeople.Added decider;
    private TestPeople.Added second;
    private AppProcess steady;
    private Browserless there;
    private int told;
    private int given;
    private int open;

    @BeforeEach
    void startTheSteadyOne() throws Exception {
        decider = TestPeople.settled(Roles.SAFETY_LEAD);
        second = TestPeople.settled(Roles.SAFETY_LEAD);
        school.qualify(id(decider), Act.DECIDE);
        school.qualify(id(second), Act.DECIDE);
        steady = node("steady");
        there = signIn(steady, second);
    }

    @AfterEach
    void stopTheSteadyOne() {
        steady.close();
    }

    @Test
    void cr02_cr06_oneIsKilledInTheMiddleOfGrantsAndTheOtherKnowsAllThatWasGiven() throws Exception {
        for (int round = 0; round < ROUNDS; round++) {
            while (waiting.size() < GRANTS) {
                waiting.add(ready());
            }
            grantAndKill(round);
        }
        System.out.printf(
                "%d rounds of kill -9: %d grants told, %d on record, %d cut off or not begun, none by half%n",
                ROUNDS, told, given, open);
        assertThat(given).as("some grants were given before a kill").isPositive();
        assertThat(open).as("some were not").isPositive();
        try (AppProcess other = node("killed")) {
            Browserless here = signIn(other, decider);
            // What was cut off is granted now as if nothing had been: nothing of it stayed behind.
            for (Cast cast : waiting) {
                assertThat(grant(here, cast)).isEqualTo(303);
                assertThat(door(there, cast)).isEqualTo("Yes");
            }
            bothGrantAtOnce(here);
            aSuspensionIsSeenByTheOther(here);
            assertThat(book.verify().findings()).isEmpty();
        }
    }

    private void grantAndKill(int round) throws Exception {
        Granting granting;
        try (AppProcess node = node("killed")) {
            granting = new Granting(signIn(node, decider), List.copyOf(waiting));
            Thread thread = new Thread(granting);
            thread.start();
            assertThat(granting.acknowledged.tryAcquire(round % (GRANTS - 1), 60, TimeUnit.SECONDS))
                    .as("grants are told: %s", granting.refused)
                    .isTrue();
            Thread.sleep(killTimes.nextInt(SPREAD_MILLIS));
            node.killHard();
            thread.join(60_000);
        }
        assertThat(granting.refused).as("each one could be granted").isEmpty();
        for (Cast cast : List.copyOf(waiting)) {
            boolean cleared = door(there, cast).equals("Yes");
            assertThat(decisions(cast)).as("granted once or not").isEqualTo(cleared ? List.of("granted") : List.of());
            boolean wasTold = granting.told.contains(cast.learner());
            assertThat(cleared || !wasTold).as("told, so given").isTrue();
            told += wasTold ? 1 : 0;
            given += cleared ? 1 : 0;
            open += cleared ? 0 : 1;
            if (cleared) {
                waiting.remove(cast);
            }
        }
        assertThat(book.verify().findings()).as("the book after a kill").isEmpty();
    }

    private void bothGrantAtOnce(Browserless here) throws Exception {
        for (int i = 0; i < 3; i++) {
            Cast cast = ready();
            CyclicBarrier together = new CyclicBarrier(2);
            List<FutureTask<Integer>> both = List.of(here, there).stream()
                    .map(browser -> new FutureTask<>(() -> {
                        together.await(60, TimeUnit.SECONDS);
                        return grant(browser, cast);
                    }))
                    .toList();
            both.forEach(one -> new Thread(one).start());
            assertThat(List.of(both.get(0).get(), both.get(1).get())).containsExactlyInAnyOrder(303, 422);
            assertThat(decisions(cast)).containsExactlyInAnyOrder("granted", "grant-refused");
            assertThat(List.of(door(here, cast), door(there, cast))).containsOnly("Yes");
        }
    }

    private void aSuspensionIsSeenByTheOther(Browserless here) {
        for (List<Browserless> pair : List.of(List.of(here, there), List.of(there, here))) {
            Cast cast = ready();
            grant(pair.get(0), cast);
            assertThat(List.of(door(here, cast), door(there, cast))).containsOnly("Yes");
            assertThat(pair.get(0)
                            .post(
                                    "/register/people/" + cast.learner() + "/suspend",
                                    Map.of("trigger", "UNSAFE_ACT", "reason", "Gloves off at the bench"))
                            .status())
                    .isEqualTo(303);
            assertThat(door(pair.get(1), cast)).isEqualTo("No");
            assertThat(door(pair.get(0), cast)).isEqualTo("No");
        }
    }

    private static int grant(Browserless browser, Cast cast) {
        return browser.post(
                        "/register/people/" + cast.learner() + "/"
                                + cast.scope().id() + "/grant",
                        Map.of("password", TestPeople.PASSWORD))
                .status();
    }

    private static String door(Browserless browser, Cast cast) {
        return browser.get("/door/" + Place.of(cast.scope()).id() + "?person=" + cast.learner() + "&task=clean")
                .page()
                .select(".told h2")
                .text();
    }

    private List<String> decisions(Cast cast) {
        return records.of(cast.learner()).stream()
                .map(PersonRecord.RecordLine::kind)
                .filter(kind -> kind.startsWith("grant"))
                .toList();
    }

    /** Grants one after another until the server is gone. */
    private static final class Granting implements Runnable {
        private final Browserless browser;
        private final List<Cast> casts;
        private final List<UUID> told = new ArrayList<>();
        private final List<String> refused = new ArrayList<>();
        private final Semaphore acknowledged = new Semaphore(0);

        private Granting(Browserless browser, List<Cast> casts) {
            this.browser = browser;
            this.casts = casts;
        }

        @Override
        public void run() {
            for (Cast cast : casts) {
                try {
                    int status = grant(browser, cast);
                    if (status == 303) {
                        told.add(cast.learner());
                        acknowledged.release();
                    } else {
                        refused.add(cast.learner() + ": " + status);
                    }
                } catch (UncheckedIOException gone) {
                    return;
                }
            }
        }
    }

    /** Everything that a grant needs, with sittings on the pool that the packaged program has. */
    private Cast ready() {
        Cast cast = school.cast(SOME);
        school.evidence(cast);
        QuarkusTransaction.requiringNew().run(() -> {
            sat(cast.learner(), school.now().minus(Duration.ofHours(49)));
            sat(cast.learner(), school.now().minus(Duration.ofHours(2)));
        });
        return cast;
    }

    private void sat(UUID learner, Instant end) {
        String pool = realSittings.currentPool(SittingsForTests.CHECK).orElseThrow();
        scribe.write(
                null,
                end,
                new Evidence.SittingNoted(
                        learner,
                        UUID.randomUUID(),
                        SittingsForTests.CHECK,
                        Evidence.SittingNoted.Kind.GATE,
                        end.minus(Duration.ofMinutes(20)),
                        end,
                        12,
                        12,
                        0,
                        new Versions("content", pool, null, "core")));
    }

    private AppProcess node(String name) throws Exception {
        return AppProcess.start(
                Files.createDirectories(folder.resolve(name)),
                Map.of(
                        "QUARKUS_DATASOURCE_JDBC_URL", setting(DatabaseProperties.URL),
                        "QUARKUS_DATASOURCE_USERNAME", setting(DatabaseProperties.USER),
                        "QUARKUS_DATASOURCE_PASSWORD", setting("quarkus.datasource.password"),
                        "QUARKUS_FLYWAY_USERNAME", setting(DatabaseProperties.MIGRATION_USER),
                        "QUARKUS_FLYWAY_PASSWORD", setting("quarkus.flyway.password"),
                        "RISEANDGEL_DEMO", "true"));
    }

    private String setting(String name) {
        return config.getValue(name, String.class);
    }

    private static UUID id(TestPeople.Added person) {
        return UUID.fromString(person.id());
    }

    private static Browserless signIn(AppProcess node, TestPeople.Added person) {
        Browserless browser = Browserless.at(node.url());
        assertThat(browser.signIn(person.signInName(), TestPeople.PASSWORD).status())
                .isEqualTo(303);
        return browser;
    }
}
