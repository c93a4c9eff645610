package org.riseandgel.platform.database;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * PostgreSQL refuses to run as root. Inside a user namespace of its own the same process is an
 * ordinary user without any of root's powers, which is what the server asks for.
 */
final class SuperUser {
    static final String ADVICE = "\nPostgreSQL does not run as root, and this system does not let root step down."
            + " Start Rise and Gel as an ordinary user, or name a PostgreSQL server of your own with"
            + " quarkus.datasource.jdbc.url.";

    private SuperUser() {}

    /** The words to put before a command; none for an ordinary user. */
    static List<String> wayAround() {
        if (!isRoot()) {
            return List.of();
        }
        if (!Files.isExecutable(Path.of("/usr/bin/unshare")) && !Files.isExecutable(Path.of("/bin/unshare"))) {
            throw new DatabaseFailure("The built-in database server cannot be started by this account." + ADVICE);
        }
        return List.of("unshare", "-U");
    }

    private static boolean isRoot() {
        Path self = Path.of("/proc/self");
        try {
            return Files.exists(self)
                    ? Files.getAttribute(self, "unix:uid").equals(0)
                    : System.getProperty("user.name").equals("root");
        } catch (IOException e) {
            throw new DatabaseFailure("It cannot be told which account runs the program: " + e.getMessage(), e);
        }
    }
}
