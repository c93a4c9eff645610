package org.riseandgel.clearance;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.flywaydb.core.Flyway;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.riseandgel.clearance.rule.ClearanceRule;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Standing;
import org.riseandgel.clearance.rule.Status;
import org.riseandgel.platform.database.EmbeddedPostgres;
import org.riseandgel.platform.start.DataFolder;
import org.riseandgel.platform.start.DatabaseProperties;
import org.riseandgel.platform.start.Key;
import org.riseandgel.platform.start.Keys;

/**
 * “May this person do this task here now?” on 100,000 kept answers, from the question to the answer, beside one read by
 * primary key of a row of about that size, on the same connection.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 3)
public class CheckSpeed {
    private static final int PEOPLE = 100_000;
    private static final UUID PLACE = new UUID(1, 1);

    /** As many lines as a large school writes in some years; only number and time matter here. */
    private static final String LINES =
            """
            INSERT INTO register_event (number, id, recorded, content_hash, previous, hash)
            SELECT n, gen_random_uuid(), now() - interval '1 hour',
                   sha256('content'), sha256('previous'), sha256('hash')
            FROM generate_series(1, 200000) AS n""";

    private EmbeddedPostgres server;
    private Connection connection;
    private PreparedStatement check;
    private PreparedStatement yardstick;
    private int next;

    /** A server of its own, with every migration and as many answers as a very large school has. */
    @Setup
    public void fill() throws IOException, SQLException {
        Path folder = Files.createTempDirectory("check-speed");
        DataFolder data =
                DataFolder.at(folder, Optional.of(Path.of("target/postgres").toAbsolutePath()));
        Keys keys = Keys.in(data, EnumSet.allOf(Key.class));
        server = EmbeddedPostgres.start(data.serverFolders(), keys.databasePasswords());
        Map<String, String> settings = DatabaseProperties.of(server, keys);
        Flyway.configure()
                .dataSource(
                        server.jdbcUrl(),
                        settings.get("quarkus.flyway.username"),
                        settings.get("quarkus.flyway.password"))
                .placeholders(Map.of("app_role", server.appLogin()))
                .load()
                .migrate();
        connection = DriverManager.getConnection(
                server.jdbcUrl(), settings.get("quarkus.flyway.username"), settings.get("quarkus.flyway.password"));
        try (Statement statement = connection.createStatement()) {
            statement.execute("CREATE TABLE yardstick (id uuid PRIMARY KEY, pieces text NOT NULL)");
        }
        insert("INSERT INTO yardstick (id, pieces) VALUES (?, ?)", false);
        insert(
                "INSERT INTO register_answer (person_id, pieces, place_id, task, depends_on) VALUES (?, ?, ?, 'WEIGH',"
                        + " '{}')",
                true);
        try (Statement statement = connection.createStatement()) {
            statement.execute("ALTER TABLE register_event DISABLE TRIGGER USER");
            statement.execute(LINES);
            statement.execute("VACUUM ANALYZE");
        }
        check = connection.prepareStatement(Answers.FIND);
        yardstick = connection.prepareStatement("SELECT pieces FROM yardstick WHERE id = ?");
    }

    @TearDown
    public void stop() throws SQLException {
        connection.close();
        server.close();
    }

    /** The yardstick. */
    @Benchmark
    public String readByPrimaryKey() throws SQLException {
        yardstick.setObject(1, person());
        try (ResultSet row = yardstick.executeQuery()) {
            row.next();
            return row.getString(1);
        }
    }

    /** The check: the read, and the answer that holds at this instant made of it. */
    @Benchmark
    public Standing mayPersonDoTask() throws SQLException {
        check.setObject(1, person());
        check.setObject(2, PLACE);
        check.setString(3, "WEIGH");
        check.setObject(4, OffsetDateTime.now(ZoneOffset.UTC));
        try (ResultSet row = check.executeQuery()) {
            row.next();
            return KeptPieces.at(row.getString(1), Instant.now()).orElseThrow();
        }
    }

    private UUID person() {
        next = (next + 7919) % PEOPLE;
        return new UUID(2, next);
    }

    private void insert(String sql, boolean placed) throws SQLException {
        connection.setAutoCommit(false);
        String pieces = KeptPieces.write(pieces());
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = 0; i < PEOPLE; i++) {
                statement.setObject(1, new UUID(2, i));
                statement.setString(2, pieces);
                if (placed) {
                    statement.setObject(3, PLACE);
                }
                statement.addBatch();
                if (i % 1000 == 999) {
                    statement.executeBatch();
                }
            }
        }
        connection.commit();
        connection.setAutoCommit(true);
    }

    /** Cleared, then late with a training, then run out: what is usual. */
    private static List<ClearanceRule.Piece> pieces() {
        Instant start = Instant.now().minusSeconds(3600);
        Instant idle = start.plusSeconds(104L * 86_400);
        Instant end = start.plusSeconds(365L * 86_400);
        return List.of(
                piece(start, Status.CLEARED, List.of(), idle),
                piece(idle, Status.NOT_CLEARED, List.of(Reason.DELTA_OVERDUE), null),
                piece(end, Status.NOT_CLEARED, List.of(Reason.DELTA_OVERDUE, Reason.EXPIRED), null));
    }

    private static ClearanceRule.Piece piece(Instant from, Status status, List<Reason> reasons, Instant until) {
        return new ClearanceRule.Piece(
                from,
                new Standing(
                        status, reasons, new UUID(3, 3), new UUID(4, 4), LocalDate.of(2027, 3, 4), until, false, null));
    }
}
