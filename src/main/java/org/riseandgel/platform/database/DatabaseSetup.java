package org.riseandgel.platform.database;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Properties;
import org.postgresql.Driver;
import org.postgresql.util.PasswordUtil;

/**
 * Makes the two working logins and the database where they are missing. The owner login owns the
 * tables and changes them; the app login may do only what the migrations grant it.
 */
final class DatabaseSetup {
    static final String OWNER = "riseandgel_owner";
    static final String APP = "riseandgel_app";
    static final String DATABASE = "riseandgel";

    private DatabaseSetup() {}

    static void ensure(int port, PasswordFiles passwords) {
        try (Connection connection = connect(port, passwords.admin())) {
            ensureLogin(connection, OWNER, passwords.owner());
            ensureLogin(connection, APP, passwords.app());
            ensureDatabase(connection);
        } catch (SQLException e) {
            throw new DatabaseFailure("The database could not be prepared: " + e.getMessage(), e);
        }
    }

    private static Connection connect(int port, Path passwordFile) throws SQLException {
        Properties login = new Properties();
        login.setProperty("user", Cluster.ADMIN);
        login.setProperty("password", PasswordFiles.read(passwordFile));
        login.setProperty("connectTimeout", "10");
        return new Driver().connect("jdbc:postgresql://127.0.0.1:" + port + "/postgres", login);
    }

    private static void ensureLogin(Connection connection, String name, Path passwordFile) throws SQLException {
        if (exists(connection, "SELECT 1 FROM pg_roles WHERE rolname = ?", name)) {
            return;
        }
        // The server gets the password's verifier only, so that no log line can ever show the password.
        String verifier =
                PasswordUtil.encodeScramSha256(PasswordFiles.read(passwordFile).toCharArray());
        execute(
                connection,
                "CREATE ROLE " + name
                        + " LOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE NOREPLICATION NOBYPASSRLS PASSWORD '" + verifier
                        + "'");
    }

    private static void ensureDatabase(Connection connection) throws SQLException {
        if (!exists(connection, "SELECT 1 FROM pg_database WHERE datname = ?", DATABASE)) {
            execute(connection, "CREATE DATABASE " + DATABASE + " OWNER " + OWNER);
        }
        // Outside the branch: a start that was cut short after the line above is finished by the next one.
        execute(connection, "REVOKE ALL ON DATABASE " + DATABASE + " FROM PUBLIC");
        execute(connection, "GRANT CONNECT ON DATABASE " + DATABASE + " TO " + APP);
    }

    private static boolean exists(Connection connection, String query, String name) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(query)) {
            statement.setString(1, name);
            try (ResultSet rows = statement.executeQuery()) {
                return rows.next();
            }
        }
    }

    private static void execute(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
