package org.riseandgel.platform.database;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import org.postgresql.Driver;
import org.riseandgel.platform.files.OwnerOnly;

/** The folders and passwords of a server under test, and what was started on them. */
final class ServerUnderTest implements AutoCloseable {
    static final Path BINARIES = Path.of("target", "postgres").toAbsolutePath();

    private final List<EmbeddedPostgres> started = new ArrayList<>();
    private final ServerFolders folders;
    private final PasswordFiles passwords;

    ServerUnderTest(Path folder) throws IOException {
        folders = new ServerFolders(BINARIES, folder.resolve("database"), folder.resolve("logs"));
        passwords = new PasswordFiles(folder.resolve("admin"), folder.resolve("owner"), folder.resolve("app"));
        OwnerOnly.write(passwords.admin(), "secret-of-admin\n");
        OwnerOnly.write(passwords.owner(), "secret-of-owner\n");
        OwnerOnly.write(passwords.app(), "secret-of-app\n");
    }

    ServerFolders folders() {
        return folders;
    }

    PasswordFiles passwords() {
        return passwords;
    }

    EmbeddedPostgres start() {
        return remember(EmbeddedPostgres.start(folders, passwords));
    }

    EmbeddedPostgres remember(EmbeddedPostgres server) {
        started.add(server);
        return server;
    }

    @Override
    public void close() {
        started.forEach(EmbeddedPostgres::close);
    }

    static Connection asAdmin(EmbeddedPostgres server) throws SQLException {
        return connect(server, "riseandgel_admin", "secret-of-admin");
    }

    static Connection asOwner(EmbeddedPostgres server) throws SQLException {
        return connect(server, "riseandgel_owner", "secret-of-owner");
    }

    static Connection connect(EmbeddedPostgres server, String login, String password) throws SQLException {
        Properties properties = new Properties();
        properties.setProperty("user", login);
        if (password != null) {
            properties.setProperty("password", password);
        }
        return new Driver().connect(server.jdbcUrl(), properties);
    }

    static List<String> column(Connection connection, String query) throws SQLException {
        List<String> values = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(query)) {
            while (rows.next()) {
                values.add(rows.getString(1));
            }
        }
        return values;
    }

    static String show(Connection connection, String setting) throws SQLException {
        return column(connection, "SHOW " + setting).get(0);
    }

    static List<String> accessMethods(Connection admin) throws SQLException {
        return column(admin, "SELECT auth_method FROM pg_hba_file_rules");
    }

    static void run(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
