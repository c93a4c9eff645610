package org.riseandgel.platform.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.PrimitiveIterator;
import java.util.Properties;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.postgresql.Driver;
import org.riseandgel.platform.files.OwnerOnly;

/** Expected values of the settings are those the server is written to have; no outside source applies. */
class EmbeddedPostgresTest {
    private static final Path BINARIES = Path.of("target", "postgres").toAbsolutePath();

    @TempDir
    Path folder;

    private final List<EmbeddedPostgres> started = new ArrayList<>();
    private ServerFolders folders;
    private PasswordFiles passwords;

    @BeforeEach
    void makePasswords() throws IOException {
        folders = new ServerFolders(BINARIES, folder.resolve("database"), folder.resolve("logs"));
        passwords = new PasswordFiles(folder.resolve("admin"), folder.resolve("owner"), folder.resolve("app"));
        OwnerOnly.write(passwords.admin(), "secret-of-admin\n");
        OwnerOnly.write(passwords.owner(), "secret-of-owner\n");
        OwnerOnly.write(passwords.app(), "secret-of-app\n");
    }

    @AfterEach
    void stopAll() {
        started.forEach(EmbeddedPostgres::close);
    }

    @Test
    void keepsWhatIsCommittedAndListensToThisComputerOnly() throws SQLException {
        EmbeddedPostgres server = start();
        try (Connection admin = asAdmin(server)) {
            assertThat(show(admin, "fsync")).isEqualTo("on");
            assertThat(show(admin, "synchronous_commit")).isEqualTo("on");
            assertThat(show(admin, "full_page_writes")).isEqualTo("on");
            assertThat(show(admin, "data_checksums")).isEqualTo("on");
            assertThat(show(admin, "listen_addresses")).isEqualTo("127.0.0.1");
            assertThat(show(admin, "unix_socket_directories")).isEmpty();
            assertThat(show(admin, "password_encryption")).isEqualTo("scram-sha-256");
            assertThat(show(admin, "max_connections")).isEqualTo("40");
            // The client's own zone hides what SHOW would tell.
            assertThat(column(admin, "SELECT setting FROM pg_file_settings WHERE name = 'timezone'"))
                    .containsExactly("UTC");
            assertThat(show(admin, "log_timezone")).isEqualTo("UTC");
            assertThat(show(admin, "server_encoding")).isEqualTo("UTF8");
            assertThat(show(admin, "server_version")).isEqualTo(ServerBinaries.VERSION);
        }
    }

    @Test
    void changesOfDurabilityMadeByHandDoNotOutliveAStart() throws IOException, SQLException {
        start().close();
        Files.writeString(folders.cluster().resolve("postgresql.conf"), "fsync = off\n");
        Files.writeString(folders.cluster().resolve("pg_hba.conf"), "host all all 0.0.0.0/0 trust\n");
        EmbeddedPostgres server = start();
        try (Connection admin = asAdmin(server)) {
            assertThat(show(admin, "fsync")).isEqualTo("on");
            assertThat(accessMethods(admin)).containsOnly("scram-sha-256");
        }
    }

    @Test
    void everyAccessRuleAsksForAPassword() throws SQLException {
        EmbeddedPostgres server = start();
        try (Connection admin = asAdmin(server)) {
            assertThat(accessMethods(admin)).isNotEmpty().containsOnly("scram-sha-256");
            assertThat(column(admin, "SELECT address FROM pg_hba_file_rules")).containsOnly("127.0.0.1");
        }
    }

    @Test
    void theVeryFirstAccessRulesAskForAPasswordToo() throws IOException {
        Cluster.ensure(
                folders.cluster(),
                ServerBinaries.in(BINARIES),
                new ServerCommand(Files.createDirectory(folders.logs())),
                passwords.admin());
        assertThat(Files.readAllLines(folders.cluster().resolve("pg_hba.conf")))
                .filteredOn(line -> !line.isBlank() && !line.startsWith("#"))
                .isNotEmpty()
                .allMatch(line -> line.endsWith("scram-sha-256"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"riseandgel_admin", "riseandgel_owner", "riseandgel_app"})
    void nobodyGetsInWithoutTheRightPassword(String login) throws SQLException {
        EmbeddedPostgres server = start();
        connect(server, login, "secret-of-" + login.substring("riseandgel_".length()))
                .close();
        assertThatThrownBy(() -> connect(server, login, "wrong"))
                .isInstanceOf(SQLException.class)
                .hasMessageContaining("password authentication failed");
        assertThatThrownBy(() -> connect(server, login, null))
                .isInstanceOf(SQLException.class)
                .hasMessageContaining("no password was provided");
    }

    @ParameterizedTest
    @CsvSource({"riseandgel_owner, secret-of-owner", "riseandgel_app, secret-of-app"})
    void theWorkingLoginsHaveNoSpecialPowers(String login, String password) throws SQLException {
        EmbeddedPostgres server = start();
        try (Connection connection = connect(server, login, password)) {
            assertThat(column(
                            connection,
                            "SELECT rolsuper OR rolcreatedb OR rolcreaterole OR rolreplication OR rolbypassrls"
                                    + " FROM pg_roles WHERE rolname = current_user"))
                    .containsExactly("f");
        }
    }

    @Test
    void theOwnerMakesTablesAndTheProgramMayNot() throws SQLException {
        EmbeddedPostgres server = start();
        try (Connection owner = connect(server, "riseandgel_owner", "secret-of-owner")) {
            run(owner, "CREATE TABLE piece (id int)");
        }
        try (Connection app = connect(server, "riseandgel_app", "secret-of-app")) {
            assertThatThrownBy(() -> run(app, "CREATE TABLE other (id int)")).hasMessageContaining("permission denied");
            assertThatThrownBy(() -> run(app, "DROP TABLE piece")).hasMessageContaining("must be owner");
            assertThatThrownBy(() -> run(app, "SELECT * FROM piece")).hasMessageContaining("permission denied");
        }
    }

    @Test
    void passwordsAreInNoLogAndInNoProcessArgument() throws IOException {
        EmbeddedPostgres server = start();
        ProcessHandle process =
                ProcessHandle.of(server.processNumber().orElseThrow()).orElseThrow();
        assertThat(process.info().commandLine().orElse("")).doesNotContain("secret");
        try (Stream<Path> logs = Files.list(folders.logs())) {
            assertThat(logs).isNotEmpty().allSatisfy(log -> assertThat(Files.readString(log))
                    .doesNotContain("secret-of"));
        }
    }

    @Test
    void committedRowsAreThereAfterTheServerWasKilled() throws Exception {
        EmbeddedPostgres server = start();
        writeRow(server);
        kill(server);
        assertThat(server.processNumber()).isEmpty();
        assertThat(rows(start())).containsExactly("kept");
    }

    @Test
    void aServerLeftRunningIsStoppedBeforeTheNextStart() throws SQLException {
        EmbeddedPostgres left = start();
        writeRow(left);
        long first = left.processNumber().orElseThrow();
        EmbeddedPostgres next = start();
        assertThat(ProcessHandle.of(first).filter(ProcessHandle::isAlive)).isEmpty();
        assertThat(next.processNumber()).isPresent().get().isNotEqualTo(first);
        assertThat(rows(next)).containsExactly("kept");
    }

    @Test
    void aProcessNumberThatNowBelongsToAnotherProgramIsLeftAlone() throws Exception {
        EmbeddedPostgres server = start();
        writeRow(server);
        kill(server);
        Process other = new ProcessBuilder("sleep", "60").start();
        try {
            noteProcessNumber(other.pid());
            assertThat(rows(start())).containsExactly("kept");
            assertThat(other.isAlive()).isTrue();
        } finally {
            other.destroyForcibly();
        }
    }

    @Test
    void aServerOfAnotherFolderIsLeftAlone(@TempDir Path elsewhere) throws Exception {
        EmbeddedPostgres server = start();
        kill(server);
        ServerFolders others = new ServerFolders(BINARIES, elsewhere.resolve("database"), elsewhere.resolve("logs"));
        EmbeddedPostgres other = EmbeddedPostgres.start(others, passwords);
        started.add(other);
        noteProcessNumber(other.processNumber().orElseThrow());
        start();
        assertThat(other.processNumber()).isPresent();
        asAdmin(other).close();
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
            EmbeddedPostgres server = EmbeddedPostgres.start(folders, passwords, ports::nextInt);
            started.add(server);
            assertThat(server.jdbcUrl()).contains(":" + free + "/");
            asAdmin(server).close();
        }
    }

    @Test
    void aSetUpThatWasCutShortIsBegunAnew() throws IOException, SQLException {
        Path half = Files.createDirectories(folder.resolve("database-new").resolve("base"));
        Files.writeString(half.resolve("half"), "x");
        asAdmin(start()).close();
        assertThat(folder.resolve("database-new")).doesNotExist();
    }

    @Test
    void aDatabaseOfAnotherVersionIsNotTouched() throws IOException {
        Files.createDirectories(folders.cluster());
        Files.writeString(folders.cluster().resolve("PG_VERSION"), "16\n");
        assertThatThrownBy(this::start)
                .isInstanceOf(DatabaseFailure.class)
                .hasMessageContaining("made by PostgreSQL 16")
                .hasMessageContaining("PostgreSQL 17");
    }

    @Test
    void aFolderWithSomethingElseInItIsNotTouched() throws IOException {
        Files.createDirectories(folders.cluster());
        Files.writeString(folders.cluster().resolve("letters.txt"), "not a database");
        assertThatThrownBy(this::start)
                .isInstanceOf(DatabaseFailure.class)
                .hasMessageContaining("holds something that is no database");
        assertThat(folders.cluster().resolve("letters.txt")).hasContent("not a database");
    }

    @Test
    void aStartThatFailsShowsWhatTheServerSaid() throws IOException {
        start().close();
        Files.delete(folders.cluster().resolve("global").resolve("pg_control"));
        assertThatThrownBy(this::start)
                .isInstanceOf(DatabaseFailure.class)
                .hasMessageContaining("could not be started")
                .hasMessageContaining("pg_control");
    }

    @Test
    void aStopLeavesNoProcess() {
        EmbeddedPostgres server = start();
        long process = server.processNumber().orElseThrow();
        server.close();
        assertThat(ProcessHandle.of(process).filter(ProcessHandle::isAlive)).isEmpty();
    }

    private EmbeddedPostgres start() {
        EmbeddedPostgres server = EmbeddedPostgres.start(folders, passwords);
        started.add(server);
        return server;
    }

    private static void kill(EmbeddedPostgres server) throws Exception {
        ProcessHandle process =
                ProcessHandle.of(server.processNumber().orElseThrow()).orElseThrow();
        process.destroyForcibly();
        process.onExit().get(30, TimeUnit.SECONDS);
    }

    private void noteProcessNumber(long number) throws IOException {
        Path file = folders.cluster().resolve("postmaster.pid");
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        lines.set(0, Long.toString(number));
        Files.write(file, lines);
    }

    private static void writeRow(EmbeddedPostgres server) throws SQLException {
        try (Connection owner = connect(server, "riseandgel_owner", "secret-of-owner")) {
            run(owner, "CREATE TABLE piece (name text)");
            run(owner, "INSERT INTO piece VALUES ('kept')");
        }
    }

    private static List<String> rows(EmbeddedPostgres server) throws SQLException {
        try (Connection owner = connect(server, "riseandgel_owner", "secret-of-owner")) {
            return column(owner, "SELECT name FROM piece");
        }
    }

    private static Connection asAdmin(EmbeddedPostgres server) throws SQLException {
        return connect(server, "riseandgel_admin", "secret-of-admin");
    }

    private static Connection connect(EmbeddedPostgres server, String login, String password) throws SQLException {
        Properties properties = new Properties();
        properties.setProperty("user", login);
        if (password != null) {
            properties.setProperty("password", password);
        }
        return new Driver().connect(server.jdbcUrl(), properties);
    }

    private static List<String> accessMethods(Connection admin) throws SQLException {
        return column(admin, "SELECT auth_method FROM pg_hba_file_rules");
    }

    private static String show(Connection connection, String setting) throws SQLException {
        return column(connection, "SHOW " + setting).get(0);
    }

    private static List<String> column(Connection connection, String query) throws SQLException {
        List<String> values = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(query)) {
            while (rows.next()) {
                values.add(rows.getString(1));
            }
        }
        return values;
    }

    private static void run(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
