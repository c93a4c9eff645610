package org.riseandgel.platform.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.riseandgel.platform.database.ServerUnderTest.accessMethods;
import static org.riseandgel.platform.database.ServerUnderTest.asAdmin;
import static org.riseandgel.platform.database.ServerUnderTest.asOwner;
import static org.riseandgel.platform.database.ServerUnderTest.column;
import static org.riseandgel.platform.database.ServerUnderTest.run;
import static org.riseandgel.platform.database.ServerUnderTest.show;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.PrimitiveIterator;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A start goes well, or ends with a reason, whatever the last run and other programs left behind. */
class EmbeddedPostgresRestartTest {
    @TempDir
    Path folder;

    private ServerUnderTest underTest;

    @BeforeEach
    void makeFolders() throws IOException {
        underTest = new ServerUnderTest(folder);
    }

    @AfterEach
    void stopAll() {
        underTest.close();
    }

    @Test
    void changesOfDurabilityMadeByHandDoNotOutliveAStart() throws IOException, SQLException {
        underTest.start().close();
        Files.writeString(underTest.folders().cluster().resolve("postgresql.conf"), "fsync = off\n");
        Files.writeString(underTest.folders().cluster().resolve("pg_hba.conf"), "host all all 0.0.0.0/0 trust\n");
        EmbeddedPostgres server = underTest.start();
        try (Connection admin = asAdmin(server)) {
            assertThat(show(admin, "fsync")).isEqualTo("on");
            assertThat(accessMethods(admin)).containsOnly("scram-sha-256");
        }
    }

    @Test
    void theVeryFirstAccessRulesAskForAPasswordToo() throws IOException {
        Cluster.ensure(
                underTest.folders().cluster(),
                ServerBinaries.in(ServerUnderTest.BINARIES),
                new ServerCommand(Files.createDirectory(underTest.folders().logs())),
                underTest.passwords().admin());
        assertThat(Files.readAllLines(underTest.folders().cluster().resolve("pg_hba.conf")))
                .filteredOn(line -> !line.isBlank() && !line.startsWith("#"))
                .isNotEmpty()
                .allMatch(line -> line.endsWith("scram-sha-256"));
    }

    @Test
    void committedRowsAreThereAfterTheServerWasKilled() throws Exception {
        EmbeddedPostgres server = underTest.start();
        writeRow(server);
        kill(server);
        assertThat(server.processNumber()).isEmpty();
        assertThat(rows(underTest.start())).containsExactly("kept");
    }

    @Test
    void aServerLeftRunningIsStoppedBeforeTheNextStart() throws SQLException {
        EmbeddedPostgres left = underTest.start();
        writeRow(left);
        long first = left.processNumber().orElseThrow();
        EmbeddedPostgres next = underTest.start();
        assertThat(ProcessHandle.of(first).filter(ProcessHandle::isAlive)).isEmpty();
        assertThat(next.processNumber()).isPresent().get().isNotEqualTo(first);
        assertThat(rows(next)).containsExactly("kept");
    }

    @Test
    void aProcessNumberThatNowBelongsToAnotherProgramIsLeftAlone() throws Exception {
        EmbeddedPostgres server = underTest.start();
        writeRow(server);
        kill(server);
        Process other = new ProcessBuilder("sleep", "60").start();
        try {
            noteProcessNumber(other.pid());
            assertThat(rows(underTest.start())).containsExactly("kept");
            assertThat(other.isAlive()).isTrue();
        } finally {
            other.destroyForcibly();
        }
    }

    @Test
    void aServerOfAnotherFolderIsLeftAlone(@TempDir Path otherFolder) throws Exception {
        EmbeddedPostgres server = underTest.start();
        kill(server);
        try (ServerUnderTest elsewhere = new ServerUnderTest(otherFolder)) {
            EmbeddedPostgres other = elsewhere.start();
            noteProcessNumber(other.processNumber().orElseThrow());
            underTest.start();
            assertThat(other.processNumber()).isPresent();
            asAdmin(other).close();
        }
    }

    @Test
    void aPortTakenInTheMeantimeIsNoReasonToGiveUp() throws IOException, SQLException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            int free;
            try (ServerSocket next = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
                free = next.getLocalPort();
            }
            PrimitiveIterator.OfInt ports =
                    IntStream.of(taken.getLocalPort(), free).iterator();
            EmbeddedPostgres server = underTest.remember(
                    EmbeddedPostgres.start(underTest.folders(), underTest.passwords(), ports::nextInt));
            assertThat(server.jdbcUrl()).contains(":" + free + "/");
            asAdmin(server).close();
        }
    }

    @Test
    void aSetUpThatWasCutShortIsBegunAnew() throws IOException, SQLException {
        Path half = Files.createDirectories(folder.resolve("database-new").resolve("base"));
        Files.writeString(half.resolve("half"), "x");
        asAdmin(underTest.start()).close();
        assertThat(folder.resolve("database-new")).doesNotExist();
    }

    @Test
    void aDatabaseOfAnotherVersionIsNotTouched() throws IOException {
        Files.createDirectories(underTest.folders().cluster());
        Files.writeString(underTest.folders().cluster().resolve("PG_VERSION"), "16\n");
        assertThatThrownBy(underTest::start)
                .isInstanceOf(DatabaseFailure.class)
                .hasMessageContaining("made by PostgreSQL 16")
                .hasMessageContaining("PostgreSQL 17");
    }

    @Test
    void aFolderWithSomethingElseInItIsNotTouched() throws IOException {
        Files.createDirectories(underTest.folders().cluster());
        Files.writeString(underTest.folders().cluster().resolve("letters.txt"), "not a database");
        assertThatThrownBy(underTest::start)
                .isInstanceOf(DatabaseFailure.class)
                .hasMessageContaining("holds something that is no database");
        assertThat(underTest.folders().cluster().resolve("letters.txt")).hasContent("not a database");
    }

    @Test
    void aStartThatFailsShowsWhatTheServerSaid() throws IOException {
        underTest.start().close();
        Files.delete(underTest.folders().cluster().resolve("global").resolve("pg_control"));
        assertThatThrownBy(underTest::start)
                .isInstanceOf(DatabaseFailure.class)
                .hasMessageContaining("could not be started")
                .hasMessageContaining("pg_control");
    }

    @Test
    void aStopLeavesNoProcess() {
        EmbeddedPostgres server = underTest.start();
        long process = server.processNumber().orElseThrow();
        server.close();
        assertThat(ProcessHandle.of(process).filter(ProcessHandle::isAlive)).isEmpty();
    }

    private static void kill(EmbeddedPostgres server) throws Exception {
        ProcessHandle process =
                ProcessHandle.of(server.processNumber().orElseThrow()).orElseThrow();
        process.destroyForcibly();
        process.onExit().get(30, TimeUnit.SECONDS);
    }

    private void noteProcessNumber(long number) throws IOException {
        Path file = underTest.folders().cluster().resolve("postmaster.pid");
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        lines.set(0, Long.toString(number));
        Files.write(file, lines);
    }

    private static void writeRow(EmbeddedPostgres server) throws SQLException {
        try (Connection owner = asOwner(server)) {
            run(owner, "CREATE TABLE piece (name text)");
            run(owner, "INSERT INTO piece VALUES ('kept')");
        }
    }

    private static List<String> rows(EmbeddedPostgres server) throws SQLException {
        try (Connection owner = asOwner(server)) {
            return column(owner, "SELECT name FROM piece");
        }
    }
}
