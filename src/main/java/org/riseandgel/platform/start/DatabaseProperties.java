package org.riseandgel.platform.start;

import java.util.Map;
import org.riseandgel.platform.database.EmbeddedPostgres;

/** What the framework must be told about the database and the keys, by the names of its settings. */
public final class DatabaseProperties {
    public static final String URL = "quarkus.datasource.jdbc.url";
    public static final String USER = "quarkus.datasource.username";
    public static final String MIGRATION_URL = "quarkus.flyway.jdbc-url";
    public static final String MIGRATION_USER = "quarkus.flyway.username";
    public static final String APP_ROLE = "quarkus.flyway.placeholders.app_role";
    public static final String CSRF_KEY = "riseandgel.form-key";

    private DatabaseProperties() {}

    /** The settings for a server of our own: the program works as one login and migrates as another. */
    public static Map<String, String> of(EmbeddedPostgres server, Keys keys) {
        return Map.of(
                URL,
                server.jdbcUrl(),
                USER,
                server.appLogin(),
                "quarkus.datasource.password",
                keys.text(Key.DATABASE_APP),
                MIGRATION_URL,
                server.jdbcUrl(),
                MIGRATION_USER,
                server.ownerLogin(),
                "quarkus.flyway.password",
                keys.text(Key.DATABASE_OWNER),
                APP_ROLE,
                server.appLogin());
    }
}
