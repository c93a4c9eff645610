package org.riseandgel.platform.database;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.stream.Stream;
import org.riseandgel.platform.files.OwnerOnly;

/** The server's data folder: made once, whole or not at all, and with passwords from its first moment. */
final class Cluster {
    static final String ADMIN = "riseandgel_admin";

    private static final Duration LIMIT = Duration.ofMinutes(3);
    private static final String VERSION_FILE = "PG_VERSION";

    private Cluster() {}

    static boolean existsIn(Path folder) {
        return Files.exists(folder.resolve(VERSION_FILE));
    }

    /** Makes the data folder if there is none. */
    static void ensure(Path folder, ServerBinaries binaries, ServerCommand command, Path adminPassword)
            throws IOException {
        if (existsIn(folder)) {
            checkVersion(folder);
            return;
        }
        checkEmpty(folder);
        Path draft = folder.resolveSibling(folder.getFileName() + "-new");
        ServerBinaries.deleteTree(draft);
        make(draft, binaries, command, adminPassword);
        Files.move(draft, folder, StandardCopyOption.ATOMIC_MOVE);
        OwnerOnly.flushFolder(folder.getParent());
    }

    private static void make(Path draft, ServerBinaries binaries, ServerCommand command, Path adminPassword)
            throws IOException {
        ServerCommand.Outcome outcome = command.run(
                LIMIT,
                binaries.program("initdb"),
                "--pgdata=" + draft,
                "--username=" + ADMIN,
                "--auth=scram-sha-256",
                "--pwfile=" + adminPassword,
                "--encoding=UTF8",
                // The server's own rules for letters: the same on every computer, whatever it has installed.
                "--locale=C",
                "--locale-provider=builtin",
                "--builtin-locale=C.UTF-8",
                "--data-checksums",
                "--no-instructions");
        if (!outcome.succeeded()) {
            throw new DatabaseFailure(
                    "The database could not be set up in " + draft.getParent() + ":\n" + outcome.output());
        }
    }

    private static void checkVersion(Path folder) throws IOException {
        String found = Files.readString(folder.resolve(VERSION_FILE)).strip();
        String ours = ServerBinaries.VERSION.substring(0, ServerBinaries.VERSION.indexOf('.'));
        if (!found.equals(ours)) {
            throw new DatabaseFailure("The database in " + folder + " was made by PostgreSQL " + found
                    + ", and this program brings PostgreSQL " + ours
                    + ". Make a backup with the program that made it and restore it here.");
        }
    }

    private static void checkEmpty(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> content = Files.list(folder)) {
            if (content.findAny().isPresent()) {
                throw new DatabaseFailure("The folder " + folder
                        + " holds something that is no database. Move it away or name another data folder.");
            }
        }
    }
}
