package org.riseandgel.platform.database;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.riseandgel.platform.files.OwnerOnly;

/**
 * The server programs, unpacked once for each version and kind of computer. The folder gets its name
 * only when everything is in it, so a folder of that name is complete.
 */
final class ServerBinaries {
    static final String VERSION = "17.6";

    private final Path folder;
    private final ComputerKind computer;

    private ServerBinaries(Path folder, ComputerKind computer) {
        this.folder = folder;
        this.computer = computer;
    }

    static ServerBinaries in(Path parent) throws IOException {
        ComputerKind computer = ComputerKind.here();
        OwnerOnly.createFolder(parent);
        Path folder = parent.toRealPath().resolve(VERSION + "-" + computer.system() + "-" + computer.processor());
        ServerBinaries binaries = new ServerBinaries(folder, computer);
        if (!Files.isDirectory(folder)) {
            binaries.unpack();
        }
        return binaries;
    }

    Path program(String name) {
        return folder.resolve("bin").resolve(computer.program(name));
    }

    private void unpack() throws IOException {
        Path draft = Files.createTempDirectory(folder.getParent(), "unpacking-");
        try (InputStream packed = archive()) {
            PackedFolder.unpack(packed, draft);
            OwnerOnly.flushTree(draft);
            takeName(draft);
        } finally {
            deleteTree(draft);
        }
    }

    private void takeName(Path draft) throws IOException {
        try {
            Files.move(draft, folder, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            throw e;
        } catch (FileSystemException e) {
            // Another process may have unpacked the same programs in the meantime; they are as good.
            if (!Files.isDirectory(folder)) {
                throw e;
            }
        }
    }

    private InputStream archive() {
        InputStream archive = ServerBinaries.class.getClassLoader().getResourceAsStream(computer.archiveName());
        if (archive == null) {
            throw new DatabaseFailure("This copy of the program holds no database server for this computer ("
                    + computer.archiveName()
                    + "). Name a PostgreSQL server of your own with quarkus.datasource.jdbc.url.");
        }
        return archive;
    }

    static void deleteTree(Path root) throws IOException {
        if (!Files.exists(root)) {
            return;
        }
        List<Path> paths;
        try (Stream<Path> walk = Files.walk(root)) {
            paths = walk.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path path : paths) {
            Files.delete(path);
        }
    }
}
