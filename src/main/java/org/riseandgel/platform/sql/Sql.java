package org.riseandgel.platform.sql;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;

/**
 * Fixed SQL text with parameters in, records out. Joins the transaction of the caller, if there is one. A failing
 * statement is an {@link IllegalStateException} with the database's own words as its cause.
 */
@ApplicationScoped
public class Sql {
    /** Makes a record of a row. */
    @FunctionalInterface
    public interface Reader<T> {
        T read(Row row) throws SQLException;
    }

    private final DataSource dataSource;

    Sql(DataSource dataSource) {
        this.dataSource = dataSource;
    }

    /** All rows, in the order of the query. */
    public <T> List<T> list(String sql, Reader<T> reader, Object... values) {
        return run(sql, values, statement -> {
            try (ResultSet rows = statement.executeQuery()) {
                List<T> found = new ArrayList<>();
                Row row = new Row(rows);
                while (rows.next()) {
                    found.add(reader.read(row));
                }
                return List.copyOf(found);
            }
        });
    }

    /** The first row, if there is one. */
    public <T> Optional<T> first(String sql, Reader<T> reader, Object... values) {
        return list(sql, reader, values).stream().findFirst();
    }

    /** Whether the query has any row. */
    public boolean any(String sql, Object... values) {
        return !list(sql, row -> Boolean.TRUE, values).isEmpty();
    }

    /** Runs a statement that changes rows and says how many it changed. */
    public int change(String sql, Object... values) {
        return run(sql, values, PreparedStatement::executeUpdate);
    }

    private <T> T run(String sql, Object[] values, Work<T> work) {
        try (Connection connection = dataSource.getConnection();
                PreparedStatement statement = connection.prepareStatement(sql)) {
            bind(connection, statement, values);
            return work.on(statement);
        } catch (SQLException e) {
            throw failed(e);
        }
    }

    private static void bind(Connection connection, PreparedStatement statement, Object[] values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, inSqlTerms(connection, values[i]));
        }
    }

    private static Object inSqlTerms(Connection connection, Object value) throws SQLException {
        if (value instanceof Instant instant) {
            return instant.atOffset(ZoneOffset.UTC);
        }
        if (value instanceof String[] texts) {
            return connection.createArrayOf("text", texts);
        }
        return value;
    }

    private static IllegalStateException failed(SQLException e) {
        return new IllegalStateException("The database refused a statement: " + e.getMessage(), e);
    }

    private interface Work<T> {
        T on(PreparedStatement statement) throws SQLException;
    }
}
