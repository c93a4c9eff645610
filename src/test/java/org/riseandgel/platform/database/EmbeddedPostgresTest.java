package org.riseandgel.platform.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.riseandgel.platform.database.ServerUnderTest.accessMethods;
import static org.riseandgel.platform.database.ServerUnderTest.asAdmin;
import static org.riseandgel.platform.database.ServerUnderTest.asOwner;
import static org.riseandgel.platform.database.ServerUnderTest.column;
import static org.riseandgel.platform.database.ServerUnderTest.connect;
import static org.riseandgel.platform.database.ServerUnderTest.run;
import static org.riseandgel.platform.database.ServerUnderTest.show;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected values of the settings are those the server is written to have; no outside source applies. */
class EmbeddedPostgresTest {
    @TempDir
    static Path folder;

    private static ServerUnderTest underTest;
    private static EmbeddedPostgres server;

    @BeforeAll
    static void startServer() throws IOException {
        underTest = new ServerUnderTest(folder);
        server = underTest.start();
    }

    @AfterAll
    static void stopServer() {
        underTest.close();
    }

    @Test
    void keepsWhatIsCommittedAndListensToThisComputerOnly() throws SQLException {
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
    void everyAccessRuleAsksForAPassword() throws SQLException {
        try (Connection admin = asAdmin(server)) {
            assertThat(accessMethods(admin)).isNotEmpty().containsOnly("scram-sha-256");
            assertThat(column(admin, "SELECT address FROM pg_hba_file_rules")).containsOnly("127.0.0.1");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"riseandgel_admin", "riseandgel_owner", "riseandgel_app"})
    void nobodyGetsInWithoutTheRightPassword(String login) throws SQLException {
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
        try (Connection owner = asOwner(server)) {
            run(owner, "CREATE TABLE piece (id int)");
        }
        try (Connection app = connect(server, "riseandgel_app", "secret-of-app")) {
            assertThatThrownBy(() -> run(app, "CREATE TABLE other (id int)")).hasMessageContaining("permission denied");
            assertThatThrownBy(() -> run(app, "CREATE TEMPORARY TABLE other (id int)"))
                    .hasMessageContaining("permission denied");
            assertThatThrownBy(() -> run(app, "DROP TABLE piece")).hasMessageContaining("must be owner");
            assertThatThrownBy(() -> run(app, "SELECT * FROM piece")).hasMessageContaining("permission denied");
        }
    }

    @Test
    void passwordsAreInNoLogAndInNoProcessArgument() throws IOException {
        ProcessHandle process =
                ProcessHandle.of(server.processNumber().orElseThrow()).orElseThrow();
        assertThat(process.info().commandLine().orElse("")).doesNotContain("secret");
        try (Stream<Path> logs = Files.list(underTest.folders().logs())) {
            assertThat(logs).isNotEmpty().allSatisfy(log -> assertThat(Files.readString(log))
                    .doesNotContain("secret-of"));
        }
    }
}
