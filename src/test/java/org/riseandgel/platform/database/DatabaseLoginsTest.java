package org.riseandgel.platform.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;

/** The login of the running program can read and write what it was granted, and change no table. */
@QuarkusTest
class DatabaseLoginsTest {
    @Inject
    DataSource dataSource;

    @Test
    void theProgramWorksAsALoginThatIsNoSuperuserAndCannotMakeTables() throws SQLException {
        try (Connection connection = dataSource.getConnection();
                Statement statement = connection.createStatement()) {
            assertThat(text(statement, "SELECT current_user")).isEqualTo("riseandgel_app");
            assertThat(text(
                            statement,
                            "SELECT rolsuper OR rolcreatedb OR rolcreaterole OR rolreplication OR rolbypassrls"
                                    + " FROM pg_roles WHERE rolname = current_user"))
                    .isEqualTo("f");
            assertThatThrownBy(() -> statement.execute("CREATE TABLE forbidden (id int)"))
                    .isInstanceOf(SQLException.class)
                    .hasMessageContaining("permission denied for schema public");
            assertThatThrownBy(() -> statement.execute("CREATE TEMPORARY TABLE forbidden (id int)"))
                    .isInstanceOf(SQLException.class)
                    .hasMessageContaining("permission denied to create temporary tables");
        }
    }

    private static String text(Statement statement, String query) throws SQLException {
        try (ResultSet rows = statement.executeQuery(query)) {
            rows.next();
            return rows.getString(1);
        }
    }
}
