package org.riseandgel.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
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
import org.eclipse.microprofile.config.Config;
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
 * Two nodes on one database: this test's own, and the packaged program beside it, which is killed (kill -9) again and again
 * in the middle of grants. Whoever was told "granted" is cleared, nobody is cleared by half, and the book holds. What one
 * node suspends, the door of the other tells at the next question.
 *
 * <p>Six rounds of five grants; {@code -Dregister.rounds=50} for more.
 */
@QuarkusTest
class TwoNodesIT {
    private static final int ROUNDS = Integer.getInteger("register.rounds", 6);
    private static final int GRANTS = 5;
    private static final int SPREAD_MILLIS = 600;
    private static final Set<Task> SOME = Set.of(Task.STORE, Task.CLEAN);

    private final Random killTimes = new Random(20_270_304);

    @TempDir
    private Path folder;

    @Inject
    School school;

    @Inject
    Scribe scribe;

    @Inject
    SittingsAsEvidence realSittings;

    @Inject
    RegisterCheck check;

    @Inject
    RegisterBook book;

    @Inject
    PersonRecord records;

    @Inject
    Config config;

    @Test
    void cr02_aGrantWhoseServerIsKilledIsGivenOrNotButNeverHalf() throws Exception {
        TestPeople.Added decider = TestPeople.settled(Roles.SAFETY_LEAD);
        school.qualify(UUID.fromString(decider.id()), Act.DECIDE);
        List<Cast> waiting = new ArrayList<>();
        int told = 0;
        int given = 0;
        int open = 0;
        for (int round = 0; round < ROUNDS; round++) {
            while (waiting.size() < GRANTS) {
                waiting.add(ready(UUID.fromString(decider.id())));
            }
            Granting granting;
            try (AppProcess node = node()) {
                Browserless browser = signIn(node, decider);
                granting = new Granting(browser, List.copyOf(waiting));
                Thread thread = new Thread(granting);
                thread.start();
                Thread.sleep(killTimes.nextInt(SPREAD_MILLIS));
                node.killHard();
                thread.join(60_000);
            }
            assertThat(granting.refused).as("each one could be granted").isEmpty();
            for (Cast cast : List.copyOf(waiting)) {
                long lines = records.of(cast.learner()).stream()
                        .filter(line -> line.kind().equals("granted"))
                        .count();
                boolean cleared = isCleared(cast);
                assertThat(lines).as("granted once or not").isEqualTo(cleared ? 1 : 0);
                if (granting.told.contains(cast.learner())) {
                    told++;
                    assertThat(cleared).as("told, so given").isTrue();
                }
                if (cleared) {
                    given++;
                    waiting.remove(cast);
                } else {
                    open++;
                }
            }
            assertThat(book.verify().findings()).as("the book after a kill").isEmpty();
        }
        // What was cut off is granted now as if nothing had been: nothing of it stayed behind.
        for (Cast cast : waiting) {
            assertThat(isCleared(cast)).isFalse();
        }
        try (AppProcess node = node()) {
            Granting rest = new Granting(signIn(node, decider), waiting);
            rest.run();
            assertThat(rest.told).hasSize(waiting.size());
            assertThat(waiting).allMatch(this::isCleared);
            node.stop();
        }
        System.out.printf(
                "%d rounds of kill -9: %d grants told, %d on record, %d cut off or not begun, none by half%n",
                ROUNDS, told, given, open);
        assertThat(given).as("some grants were given before a kill").isPositive();
        assertThat(open).as("some were not").isPositive();
    }

    @Test
    void cr06_cr23_aSuspensionOnOneNodeIsSeenAtTheDoorOfTheOtherAtOnce() throws Exception {
        TestPeople.Added instructor = TestPeople.settled(Roles.INSTRUCTOR);
        Cast first = school.cleared(SOME);
        Cast second = school.cleared(SOME);
        try (AppProcess node = node()) {
            Browserless there = signIn(node, instructor);
            Browserless here = TestPeople.signIn(instructor);
            assertThat(List.of(door(here, first), door(there, first), door(here, second), door(there, second)))
                    .containsOnly("Yes");
            suspend(there, first);
            assertThat(door(here, first)).isEqualTo("No");
            assertThat(door(there, first)).isEqualTo("No");
            suspend(here, second);
            assertThat(door(there, second)).isEqualTo("No");
            assertThat(door(here, second)).isEqualTo("No");
            node.stop();
        }
    }

    private static void suspend(Browserless browser, Cast cast) {
        Browserless.Answer answer = browser.post(
                "/register/people/" + cast.learner() + "/suspend",
                Map.of("trigger", "UNSAFE_ACT", "reason", "Gloves off at the bench"));
        assertThat(answer.status()).as(answer.toString()).isEqualTo(303);
    }

    private static String door(Browserless browser, Cast cast) {
        return browser.get("/door/" + Place.of(cast.scope()).id() + "?person=" + cast.learner() + "&task=clean")
                .page()
                .select(".told h2")
                .text();
    }

    /** Grants one after another until the server is gone. */
    private static final class Granting implements Runnable {
        private final Browserless browser;
        private final List<Cast> casts;
        private final List<UUID> told = new ArrayList<>();
        private final List<String> refused = new ArrayList<>();

        private Granting(Browserless browser, List<Cast> casts) {
            this.browser = browser;
            this.casts = casts;
        }

        @Override
        public void run() {
            for (Cast cast : casts) {
                try {
                    Browserless.Answer answer = browser.post("/register/people/" + cast.learner() + "/"
                            + cast.scope().id() + "/grant");
                    if (answer.status() == 303) {
                        told.add(cast.learner());
                    } else {
                        refused.add(answer.page().text());
                    }
                } catch (java.io.UncheckedIOException gone) {
                    return;
                }
            }
        }
    }

    private boolean isCleared(Cast cast) {
        return check.ask(null, cast.learner(), Place.of(cast.scope()), Task.CLEAN)
                .isYes();
    }

    /** Everything that a grant needs, with sittings on the pool that the packaged program has. */
    private Cast ready(UUID decider) {
        Cast made = school.cast(SOME);
        Cast cast = new Cast(
                made.learner(),
                made.trainer(),
                made.observer(),
                decider,
                made.lead(),
                made.scope(),
                made.revision(),
                made.salt());
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

    private AppProcess node() throws Exception {
        Path data = Files.createDirectories(folder.resolve("node"));
        return AppProcess.start(
                data,
                Map.of(
                        "QUARKUS_DATASOURCE_JDBC_URL", setting(DatabaseProperties.URL),
                        "QUARKUS_DATASOURCE_USERNAME", setting(DatabaseProperties.USER),
                        "QUARKUS_DATASOURCE_PASSWORD", setting("quarkus.datasource.password"),
                        "QUARKUS_FLYWAY_USERNAME", setting(DatabaseProperties.MIGRATION_USER),
                        "QUARKUS_FLYWAY_PASSWORD", setting("quarkus.flyway.password"),
                        "RISEANDGEL_DEMO", "true"),
                "-Dquarkus.http.port=0");
    }

    private String setting(String name) {
        return config.getValue(name, String.class);
    }

    private static Browserless signIn(AppProcess node, TestPeople.Added person) {
        Browserless browser = Browserless.at(node.url());
        assertThat(browser.signIn(person.signInName(), TestPeople.PASSWORD).status())
                .isEqualTo(303);
        return browser;
    }
}
