package org.riseandgel;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.postgresql.Driver;
import org.riseandgel.platform.database.EmbeddedPostgres;
import org.riseandgel.platform.start.DataFolder;
import org.riseandgel.platform.start.Key;
import org.riseandgel.platform.start.Keys;

/** Starts and ends of the packaged program. Exit code 143 is 128 + SIGTERM, as the JVM ends on that signal. */
class RiseAndGelMainIT {
    private static final Map<String, String> NOTHING_SET = Map.of();

    @TempDir
    Path parent;

    private Path dataDir;

    @BeforeEach
    void nameFolder() {
        dataDir = parent.resolve("school");
    }

    @Test
    void aStopLeavesNoDatabaseServerAndTheNextStartGoesOn() throws IOException {
        try (AppProcess app = AppProcess.start(dataDir, NOTHING_SET)) {
            ProcessHandle database = app.databaseServer().orElseThrow();
            assertThat(app.stop()).isEqualTo(143);
            assertThat(database.isAlive()).isFalse();
            assertThat(dataDir.resolve("database").resolve("postmaster.pid")).doesNotExist();
        }
        try (AppProcess again = AppProcess.start(dataDir, NOTHING_SET)) {
            assertThat(again.statusOf("/q/health/ready")).isEqualTo(200);
            again.stop();
        }
    }

    @Test
    void aSecondStartOnTheSameFolderEndsAtOnceAndTheFirstGoesOn() throws IOException {
        try (AppProcess first = AppProcess.start(dataDir, NOTHING_SET)) {
            long database = first.databaseServer().orElseThrow().pid();
            AppProcess second = AppProcess.launch(dataDir, NOTHING_SET);
            assertThat(second.awaitExit()).isEqualTo(2);
            assertThat(second.output())
                    .isEqualToIgnoringNewLines("Rise and Gel is already running on this folder (" + dataDir.toRealPath()
                            + "): stop it first, or name another folder with riseandgel.data-dir.");
            assertThat(first.databaseServer().orElseThrow().pid()).isEqualTo(database);
            assertThat(first.statusOf("/q/health/ready")).isEqualTo(200);
            first.stop();
        }
    }

    @Test
    void aKilledProgramComesUpAgainWithItsData() throws IOException, SQLException {
        ProcessHandle left;
        try (AppProcess app = AppProcess.start(dataDir, NOTHING_SET)) {
            writeRow();
            app.killHard();
            left = app.databaseServer().orElseThrow();
            try (AppProcess again = AppProcess.start(dataDir, NOTHING_SET)) {
                assertThat(left.isAlive()).isFalse();
                assertThat(readRow()).isEqualTo("kept");
                again.killAll();
            }
        }
        try (AppProcess last = AppProcess.start(dataDir, NOTHING_SET)) {
            assertThat(readRow()).isEqualTo("kept");
            last.stop();
        }
    }

    @Test
    void aMissingKeyStopsTheStart() throws IOException {
        try (AppProcess app = AppProcess.start(dataDir, NOTHING_SET)) {
            app.stop();
        }
        Files.delete(dataDir.resolve("keys").resolve("csrf.key"));
        try (AppProcess app = AppProcess.launch(dataDir, NOTHING_SET)) {
            assertThat(app.awaitExit()).isEqualTo(1);
            assertThat(app.output()).contains("csrf.key").contains("put it back from a backup");
            assertThat(app.databaseServer()).isEmpty();
        }
    }

    @Test
    void listeningOnTheNetworkUnprotectedStopsTheStartBeforeAnythingIsMade() throws IOException {
        try (AppProcess app = AppProcess.launch(dataDir, Map.of("QUARKUS_HTTP_HOST", "0.0.0.0"))) {
            assertThat(app.awaitExit()).isEqualTo(1);
            assertThat(app.output()).contains("other computers could read along");
            assertThat(dataDir).doesNotExist();
        }
    }

    @Test
    void aTakenWebPortEndsTheProgramAndItsDatabaseServer() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"));
                AppProcess app =
                        AppProcess.launch(dataDir, NOTHING_SET, "-Dquarkus.http.port=" + taken.getLocalPort())) {
            assertThat(app.awaitExit()).isEqualTo(1);
            assertThat(app.output()).contains("Port " + taken.getLocalPort() + " seems to be in use");
            assertThat(app.databaseServer()).isEmpty();
        }
    }

    @Test
    void aNamedServerIsUsedWithOneLoginAndNoneIsStarted() throws IOException {
        try (EmbeddedPostgres other = otherServer()) {
            assertRunsOn(
                    other,
                    Map.of(
                            "QUARKUS_DATASOURCE_USERNAME", other.ownerLogin(),
                            "QUARKUS_DATASOURCE_PASSWORD", otherKeys().text(Key.DATABASE_OWNER)));
        }
    }

    @Test
    void aNamedServerIsUsedWithALoginOfItsOwnForMigrations() throws IOException {
        try (EmbeddedPostgres other = otherServer()) {
            assertRunsOn(
                    other,
                    Map.of(
                            "QUARKUS_DATASOURCE_USERNAME", other.appLogin(),
                            "QUARKUS_DATASOURCE_PASSWORD", otherKeys().text(Key.DATABASE_APP),
                            "QUARKUS_FLYWAY_USERNAME", other.ownerLogin(),
                            "QUARKUS_FLYWAY_PASSWORD", otherKeys().text(Key.DATABASE_OWNER)));
        }
    }

    @Test
    void aNamedServerWithoutALoginStopsTheStart() throws IOException {
        try (AppProcess app = AppProcess.launch(
                dataDir, Map.of("QUARKUS_DATASOURCE_JDBC_URL", "jdbc:postgresql://127.0.0.1:1/none"))) {
            assertThat(app.awaitExit()).isEqualTo(1);
            assertThat(app.output()).contains("quarkus.datasource.username");
        }
    }

    private void assertRunsOn(EmbeddedPostgres other, Map<String, String> logins) throws IOException {
        Map<String, String> environment = new HashMap<>(logins);
        environment.put("QUARKUS_DATASOURCE_JDBC_URL", other.jdbcUrl());
        try (AppProcess app = AppProcess.start(dataDir, environment)) {
            assertThat(app.statusOf("/q/health/ready")).isEqualTo(200);
            assertThat(dataDir.resolve("database")).doesNotExist();
            assertThat(dataDir.resolve("keys").resolve("csrf.key")).exists();
            assertThat(app.stop()).isEqualTo(143);
        }
        assertThat(other.processNumber()).isPresent();
    }

    private EmbeddedPostgres otherServer() {
        return EmbeddedPostgres.start(otherFolder().serverFolders(), otherKeys().databasePasswords());
    }

    private Keys otherKeys() {
        return Keys.in(otherFolder(), EnumSet.allOf(Key.class));
    }

    private DataFolder otherFolder() {
        return DataFolder.at(parent.resolve("other"), Optional.of(PostgresForTests.BINARIES));
    }

    private void writeRow() throws IOException, SQLException {
        try (Connection owner = connectAsOwner();
                Statement statement = owner.createStatement()) {
            statement.execute("CREATE TABLE kept_row (word text)");
            statement.execute("INSERT INTO kept_row VALUES ('kept')");
        }
    }

    private String readRow() throws IOException, SQLException {
        try (Connection owner = connectAsOwner();
                Statement statement = owner.createStatement();
                ResultSet rows = statement.executeQuery("SELECT word FROM kept_row")) {
            rows.next();
            return rows.getString(1);
        }
    }

    private Connection connectAsOwner() throws IOException, SQLException {
        String port = Files.readAllLines(dataDir.resolve("database").resolve("postmaster.pid"))
                .get(3);
        Properties login = new Properties();
        login.setProperty("user", "riseandgel_owner");
        login.setProperty(
                "password",
                Files.readString(dataDir.resolve("keys").resolve("database-owner.password"))
                        .strip());
        return new Driver().connect("jdbc:postgresql://127.0.0.1:" + port + "/riseandgel", login);
    }
}
