package org.riseandgel.platform.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.riseandgel.platform.database.EmbeddedPostgres;
import org.riseandgel.platform.database.PasswordFiles;
import org.riseandgel.platform.files.OwnerOnly;

/**
 * The secrets in the data folder. Each is made once, and noted; one that was made and is gone stops
 * the start, because a fresh one in its place would hide a loss and fit nothing that was made with
 * the old one.
 */
public final class Keys {
    private static final int BYTES = 48; // 384 bits, written as 64 characters

    private final DataFolder data;

    private Keys(DataFolder data) {
        this.data = data;
    }

    /**
     * Makes the wanted keys that were never made before and checks the others.
     *
     * @throws StartFailure when a key is missing or cannot be read
     */
    public static Keys in(DataFolder data, Set<Key> wanted) {
        Keys keys = new Keys(data);
        try {
            OwnerOnly.createFolder(data.keys());
            OwnerOnly.restrict(data.keys());
            keys.makeNew(wanted);
        } catch (IOException e) {
            throw StartFailure.because("The keys in " + data.keys() + " cannot be made or read: " + e, e);
        }
        wanted.forEach(keys::text);
        return keys;
    }

    /** The key itself. */
    public String text(Key key) {
        Path file = file(key);
        try {
            OwnerOnly.restrict(file);
            String text = Files.readString(file, StandardCharsets.UTF_8).strip();
            if (text.isEmpty()) {
                throw lost(file, "is empty");
            }
            return text;
        } catch (IOException e) {
            throw lost(file, "is missing or cannot be read");
        }
    }

    /** The files with the passwords of the database's logins. */
    public PasswordFiles databasePasswords() {
        return new PasswordFiles(file(Key.DATABASE_ADMIN), file(Key.DATABASE_OWNER), file(Key.DATABASE_APP));
    }

    private Path file(Key key) {
        return data.keys().resolve(key.fileName());
    }

    private void makeNew(Set<Key> wanted) throws IOException {
        Set<String> made = madeBefore();
        Set<Key> missing = EnumSet.noneOf(Key.class);
        wanted.stream().filter(key -> !made.contains(key.fileName())).forEach(missing::add);
        for (Key key : missing) {
            if (!Files.exists(file(key))) {
                OwnerOnly.write(file(key), random() + "\n");
            }
            made.add(key.fileName());
        }
        if (!missing.isEmpty()) {
            OwnerOnly.write(data.listOfMadeKeys(), String.join("\n", made) + "\n");
        }
    }

    /** Without the list, a database that is there proves that every key was made before it. */
    private Set<String> madeBefore() throws IOException {
        if (Files.exists(data.listOfMadeKeys())) {
            return new TreeSet<>(Files.readAllLines(data.listOfMadeKeys(), StandardCharsets.UTF_8));
        }
        if (EmbeddedPostgres.existsIn(data.serverFolders())) {
            return new TreeSet<>(
                    List.of(Key.values()).stream().map(Key::fileName).toList());
        }
        return new TreeSet<>();
    }

    private static String random() {
        byte[] bytes = new byte[BYTES];
        new SecureRandom().nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    private static StartFailure lost(Path file, String what) {
        return StartFailure.because("The key file " + file + " " + what
                + ". It was made on the first start and cannot be made again: put it back from a backup.");
    }
}
