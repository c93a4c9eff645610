package org.riseandgel.platform.start;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.riseandgel.platform.database.ServerFolders;
import org.riseandgel.platform.files.OwnerOnly;

/** The folder in which everything lies that the program keeps on this computer. */
public final class DataFolder {
    private final Path root;
    private final Path binaries;

    private DataFolder(Path root, Path binaries) {
        this.root = root;
        this.binaries = binaries;
    }

    /** The folder at the path, made if it is missing, open to its owner only. */
    public static DataFolder at(Path path) {
        return at(path, Optional.empty());
    }

    /** The same, with the server's programs unpacked in another folder that several data folders may share. */
    public static DataFolder at(Path path, Optional<Path> binaries) {
        try {
            OwnerOnly.createFolder(path.toAbsolutePath());
            Path root = path.toRealPath();
            return new DataFolder(root, binaries.orElse(root.resolve("postgres")));
        } catch (IOException e) {
            throw StartFailure.because(
                    "The data folder " + path + " cannot be made or opened (" + e
                            + "). Name another one with riseandgel.data-dir.",
                    e);
        }
    }

    public Path root() {
        return root;
    }

    public ServerFolders serverFolders() {
        return new ServerFolders(binaries, root.resolve("database"), root.resolve("logs"));
    }

    Path keys() {
        return root.resolve("keys");
    }

    Path listOfMadeKeys() {
        return root.resolve("keys-made");
    }

    /**
     * Takes the folder for this process until the lock is closed or the process ends, however it ends.
     *
     * @throws StartFailure with exit code 2 when another process has it
     */
    public FolderLock lock() {
        return FolderLock.take(root);
    }
}
