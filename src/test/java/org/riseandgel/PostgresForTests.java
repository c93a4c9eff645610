package org.riseandgel;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.postgresql.Driver;
import org.riseandgel.platform.database.EmbeddedPostgres;
import org.riseandgel.platform.start.DataFolder;
import org.riseandgel.platform.start.DatabaseProperties;
import org.riseandgel.platform.start.Key;
import org.riseandgel.platform.start.Keys;
import org.riseandgel.platform.start.StartFailure;

/**
 * Gives every test that starts the program an empty database, with nothing to be written in the test:
 * a server of its own for each test run, or the server named by QUARKUS_DATASOURCE_JDBC_URL. The
 * server stays up until the run ends, also when the program is started anew in between.
 */
@QuarkusTestResource(PostgresForTests.class)
public final class PostgresForTests implements QuarkusTestResourceLifecycleManager {
    private static final String REMEMBERED = "test-database.";

    private static final Path TARGET = Path.of("target").toAbsolutePath();

    /** Unpacked server programs, shared by all tests. */
    static final Path BINARIES = TARGET.resolve("postgres");

    @Override
    public Map<String, String> start() {
        Map<String, String> properties = new HashMap<>();
        properties.put(DatabaseProperties.CSRF_KEY, "a-key-for-tests-only-that-is-long-enough-for-the-signature");
        if (System.getenv("QUARKUS_DATASOURCE_JDBC_URL") == null) {
            properties.putAll(remembered().orElseGet(PostgresForTests::startServer));
        } else {
            properties.put(DatabaseProperties.APP_ROLE, System.getenv("QUARKUS_DATASOURCE_USERNAME"));
        }
        return properties;
    }

    @Override
    public void stop() {
        // The shutdown hook stops the server, once all tests of the run are done.
    }

    private static Map<String, String> startServer() {
        DataFolder folder = freeFolder(1);
        Keys keys = Keys.in(folder, EnumSet.allOf(Key.class));
        EmbeddedPostgres server = emptyServer(folder, keys);
        Runtime.getRuntime().addShutdownHook(new Thread(server::close, "stop test database"));
        Map<String, String> properties = DatabaseProperties.of(server, keys);
        properties.forEach((name, value) -> System.setProperty(REMEMBERED + name, value));
        return properties;
    }

    /** The first folder that no other test run uses; held until the run ends. */
    private static DataFolder freeFolder(int number) {
        DataFolder folder = DataFolder.at(TARGET.resolve("test-databases").resolve("" + number), Optional.of(BINARIES));
        try {
            folder.lock();
            return folder;
        } catch (StartFailure taken) {
            return freeFolder(number + 1);
        }
    }

    /** An earlier run's server is taken up again, which is quicker than a new one, but not its database. */
    private static EmbeddedPostgres emptyServer(DataFolder folder, Keys keys) {
        boolean used = EmbeddedPostgres.existsIn(folder.serverFolders());
        EmbeddedPostgres server = EmbeddedPostgres.start(folder.serverFolders(), keys.databasePasswords());
        if (!used) {
            return server;
        }
        dropDatabase(server.jdbcUrl(), keys.text(Key.DATABASE_ADMIN));
        server.close();
        return EmbeddedPostgres.start(folder.serverFolders(), keys.databasePasswords());
    }

    private static void dropDatabase(String url, String adminPassword) {
        Properties login = new Properties();
        login.setProperty("user", "riseandgel_admin");
        login.setProperty("password", adminPassword);
        String maintenance = url.substring(0, url.lastIndexOf('/')) + "/postgres";
        try (Connection connection = new Driver().connect(maintenance, login);
                Statement statement = connection.createStatement()) {
            statement.execute("DROP DATABASE IF EXISTS riseandgel WITH (FORCE)");
        } catch (SQLException e) {
            throw new IllegalStateException("The database of the last test run could not be dropped", e);
        }
    }

    /** What an earlier start in this run noted; kept in system properties, which outlive the class loaders. */
    private static Optional<Map<String, String>> remembered() {
        Map<String, String> properties = new HashMap<>();
        for (String name : System.getProperties().stringPropertyNames()) {
            if (name.startsWith(REMEMBERED)) {
                properties.put(name.substring(REMEMBERED.length()), System.getProperty(name));
            }
        }
        return properties.isEmpty() ? Optional.empty() : Optional.of(properties);
    }
}
