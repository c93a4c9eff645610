package org.riseandgel.platform.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.Test;

/** The login of the running program can read and write what it was granted, and change no table. */
@QuarkusTest
class DatabaseLoginsTest {
    @Inject
    DataSource dataSource;

    @ConfigProperty(name = "quarkus.flyway.username")
    Optional<String> migrationLogin;

    @Test
    void theProgramWorksAsALoginThatMayNotMakeTables() throws SQLException {
        try (Connection connection = dataSource.getConnection();
                Statement statement = connection.createStatement()) {
            String login = text(statement, "SELECT current_user");
            assumeThat(migrationLogin).isPresent();
            assertThat(login).isNotEqualTo(migrationLogin.orElseThrow());
            assertThatThrownBy(() -> statement.execute("CREATE TABLE forbidden (id int)"))
                    .isInstanceOf(SQLException.class)
                    .hasMessageContaining("permission denied for schema public");
        }
    }

    private static String text(Statement statement, String query) throws SQLException {
        try (ResultSet rows = statement.executeQuery(query)) {
            rows.next();
            return rows.getString(1);
        }
    }
}
