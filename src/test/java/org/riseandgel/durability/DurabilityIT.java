package org.riseandgel.durability;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.riseandgel.AppProcess;
import org.riseandgel.Browserless;
import org.riseandgel.Oracle;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.Roles;
import org.riseandgel.durability.Learner.Acknowledged;

/**
 * Six learners answer without pause; the program, or the program and its database, is killed in the middle, and started
 * again. Each answer that was acknowledged is there exactly once, with the verdict it deserves, and the standings agree.
 *
 * <p>Ten rounds; {@code -Ddurability.rounds=50} for more.
 */
class DurabilityIT {
    private static final int ROUNDS = Integer.getInteger("durability.rounds", 10);
    private static final int LEAST_MILLIS_OF_LOAD = 700;
    private static final int SPREAD_MILLIS_OF_LOAD = 900;

    private final Random killTimes = new Random(20_261);
    private final Queue<Acknowledged> acknowledged = new ConcurrentLinkedQueue<>();
    private final List<String> failures = new ArrayList<>();

    @TempDir
    private Path folder;

    private Path dataDir;
    private int port;

    @BeforeEach
    void choosePort() throws Exception {
        dataDir = Files.createDirectory(folder.resolve("data"));
        try (ServerSocket socket = new ServerSocket(0)) {
            port = socket.getLocalPort();
        }
    }

    @Test
    void acknowledgedAnswersOutliveEveryKill() throws Exception {
        List<Browserless> people = new ArrayList<>();
        for (int round = 1; round <= ROUNDS; round++) {
            try (AppProcess app = start()) {
                if (people.isEmpty()) {
                    people.addAll(signIn(app));
                }
                verify(round - 1);
                loadAndKill(app, people, round);
            }
        }
        try (AppProcess app = start()) {
            verify(ROUNDS);
            assertThat(app.stop()).as("a calm end").isIn(0, 143);
        }
        assertThat(acknowledged).as("answers under load").hasSizeGreaterThan(5 * ROUNDS);
        System.out.printf(
                "%d rounds of kill -9: %d acknowledged answers, none lost, none twice%n", ROUNDS, acknowledged.size());
    }

    private AppProcess start() throws Exception {
        return AppProcess.start(dataDir, Map.of("RISEANDGEL_DEMO", "true"), "-Dquarkus.http.port=" + port);
    }

    /** Signed in once: the sign-ins have to outlive the kills too. */
    private static List<Browserless> signIn(AppProcess app) {
        return DemoPeople.ALL.stream()
                .filter(person -> person.role().equals(Roles.APPRENTICE))
                .map(person -> {
                    Browserless browser = Browserless.at(app.url());
                    assertThat(browser.signIn(person.signInName(), person.password())
                                    .status())
                            .isEqualTo(303);
                    return browser;
                })
                .toList();
    }

    private void loadAndKill(AppProcess app, List<Browserless> people, int round) throws Exception {
        Oracle oracle = new Oracle(database());
        int before = acknowledged.size();
        List<Thread> threads = people.stream()
                .map(browser -> new Thread(new Learner(browser, oracle, acknowledged)))
                .toList();
        threads.forEach(thread -> thread.setUncaughtExceptionHandler((t, e) -> failures.add(e.toString())));
        threads.forEach(Thread::start);
        awaitFirstAnswers(before + people.size());
        Thread.sleep(LEAST_MILLIS_OF_LOAD + killTimes.nextInt(SPREAD_MILLIS_OF_LOAD));
        if (round % 2 == 0) {
            app.killAll();
        } else {
            app.killHard();
        }
        for (Thread thread : threads) {
            thread.join(60_000);
        }
        assertThat(failures).isEmpty();
    }

    private void awaitFirstAnswers(int count) throws InterruptedException {
        for (int i = 0; i < 600 && acknowledged.size() < count && failures.isEmpty(); i++) {
            Thread.sleep(100);
        }
        assertThat(failures).isEmpty();
        assertThat(acknowledged).as("answers arrive before the kill").hasSizeGreaterThanOrEqualTo(count);
    }

    private void verify(int round) throws Exception {
        try (Connection connection = database().connect();
                Statement statement = connection.createStatement()) {
            Map<String, String> verdicts = new HashMap<>();
            ResultSet rows = statement.executeQuery("SELECT draw_id::text, part, typed, verdict FROM answer");
            while (rows.next()) {
                String key = rows.getString(1) + "/" + rows.getInt(2);
                assertThat(verdicts.put(key, rows.getString(3) + " is " + rows.getString(4)))
                        .as("%s is there once", key)
                        .isNull();
            }
            for (Acknowledged answer : acknowledged) {
                String stored = verdicts.get(answer.draw() + "/" + answer.part());
                assertThat(stored)
                        .as("after round %d: %s", round, answer)
                        .isNotNull()
                        .startsWith(answer.typed());
                assertThat(stored.endsWith("is RIGHT"))
                        .as("verdict of %s", answer)
                        .isEqualTo(answer.right());
            }
            assertThat(mismatchedStandings(statement))
                    .as("standings agree with answers")
                    .isZero();
        }
    }

    private static int mismatchedStandings(Statement statement) throws Exception {
        ResultSet row = statement.executeQuery(
                """
                SELECT count(*) FROM
                  (SELECT d.person_id, d.skill, count(*) AS n,
                          count(*) FILTER (WHERE a.verdict = 'RIGHT') AS right_n
                   FROM answer a JOIN draw d ON d.id = a.draw_id GROUP BY 1, 2) AS counted
                  FULL JOIN skill_standing s USING (person_id, skill)
                WHERE s.answers IS DISTINCT FROM counted.n OR s.right_answers IS DISTINCT FROM counted.right_n
                """);
        row.next();
        return row.getInt(1);
    }

    private Oracle.Connections database() throws Exception {
        String databasePort = Files.readAllLines(dataDir.resolve("database").resolve("postmaster.pid"))
                .get(3);
        String password = Files.readString(dataDir.resolve("keys").resolve("database-owner.password"))
                .strip();
        String url = "jdbc:postgresql://127.0.0.1:" + databasePort.strip() + "/riseandgel";
        return () -> DriverManager.getConnection(url, "riseandgel_owner", password);
    }
}
