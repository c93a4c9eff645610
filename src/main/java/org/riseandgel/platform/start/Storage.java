package org.riseandgel.platform.start;

import java.io.IOException;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import org.riseandgel.platform.database.EmbeddedPostgres;

/**
 * The program's hold on its data: the data folder, its keys, and the database, which is a server of
 * our own unless the settings name another.
 */
public final class Storage implements AutoCloseable {
    private FolderLock lock;
    private EmbeddedPostgres server;

    /**
     * Opens the data and gives the settings with which the framework finds it.
     *
     * @throws StartFailure when the data must not or cannot be opened
     */
    public synchronized Map<String, String> open(EarlySettings settings) {
        return settings.text(DatabaseProperties.URL).isPresent() ? useTheirServer(settings) : startOurServer(settings);
    }

    /** Stops our server, if we started one, and lets go of the folder. */
    @Override
    public synchronized void close() {
        if (server != null) {
            server.close();
            server = null;
        }
        unlock();
    }

    private Map<String, String> startOurServer(EarlySettings settings) {
        DataFolder folder = settings.dataFolder();
        lock = folder.lock();
        EnumSet<Key> wanted = EnumSet.allOf(Key.class);
        if (hasCsrfKey(settings)) {
            wanted.remove(Key.CSRF);
        }
        Keys keys = Keys.in(folder, wanted);
        server = EmbeddedPostgres.start(folder.serverFolders(), keys.databasePasswords());
        Map<String, String> properties = new HashMap<>(DatabaseProperties.of(server, keys));
        if (!hasCsrfKey(settings)) {
            properties.put(DatabaseProperties.CSRF_KEY, keys.text(Key.CSRF));
        }
        return properties;
    }

    private Map<String, String> useTheirServer(EarlySettings settings) {
        Map<String, String> properties = new HashMap<>();
        if (settings.text(DatabaseProperties.APP_ROLE).isEmpty()) {
            properties.put(DatabaseProperties.APP_ROLE, appLogin(settings));
        }
        if (!hasCsrfKey(settings)) {
            Keys keys = Keys.in(settings.dataFolder(), EnumSet.of(Key.CSRF));
            properties.put(DatabaseProperties.CSRF_KEY, keys.text(Key.CSRF));
        }
        return properties;
    }

    private static String appLogin(EarlySettings settings) {
        return settings.text(DatabaseProperties.USER)
                .orElseThrow(() -> StartFailure.because("The database server is named by " + DatabaseProperties.URL
                        + ", but not the login to use there: set " + DatabaseProperties.USER
                        + " and quarkus.datasource.password."));
    }

    private static boolean hasCsrfKey(EarlySettings settings) {
        return settings.text(DatabaseProperties.CSRF_KEY).isPresent();
    }

    private void unlock() {
        try {
            if (lock != null) {
                lock.close();
                lock = null;
            }
        } catch (IOException e) {
            throw StartFailure.because("The data folder could not be unlocked: " + e, e);
        }
    }
}
