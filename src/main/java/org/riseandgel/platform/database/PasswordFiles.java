package org.riseandgel.platform.database;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The files that hold the passwords of the server's three logins. They are handed around as files so
 * that no password ends up in a log line, an error message or the arguments of a process.
 *
 * @param admin login that may do everything; used at start only
 * @param owner login that owns the tables and changes them
 * @param app login the running program uses
 */
public record PasswordFiles(Path admin, Path owner, Path app) {
    static String read(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new DatabaseFailure("The password file " + file + " cannot be read: " + e.getMessage(), e);
        }
    }
}
