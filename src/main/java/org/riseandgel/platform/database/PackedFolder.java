package org.riseandgel.platform.database;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.Set;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.tukaani.xz.XZInputStream;

/** Unpacks a tar archive packed with xz; refuses what would land outside the folder. */
final class PackedFolder {
    private static final int OWNER_EXECUTES = 0100;

    private final Path folder;

    private PackedFolder(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
    }

    static void unpack(InputStream packed, Path folder) throws IOException {
        try (TarArchiveInputStream tar =
                new TarArchiveInputStream(new XZInputStream(new BufferedInputStream(packed)))) {
            PackedFolder target = new PackedFolder(folder);
            for (TarArchiveEntry entry = tar.getNextEntry(); entry != null; entry = tar.getNextEntry()) {
                target.take(entry, tar);
            }
        }
    }

    private void take(TarArchiveEntry entry, InputStream content) throws IOException {
        Path path = inside(folder.resolve(entry.getName()), entry);
        if (entry.isDirectory()) {
            Files.createDirectories(path);
        } else if (entry.isSymbolicLink()) {
            makeParent(path);
            inside(path.resolveSibling(entry.getLinkName()), entry);
            Files.createSymbolicLink(path, Path.of(entry.getLinkName()));
        } else if (entry.isFile()) {
            makeParent(path);
            Files.copy(content, path);
            setMode(path, entry.getMode());
        } else {
            throw new IOException("The archive holds something that is no file, folder or link: " + entry.getName());
        }
    }

    private Path inside(Path path, TarArchiveEntry entry) throws IOException {
        Path normal = path.normalize();
        if (!normal.startsWith(folder)) {
            throw new IOException("The archive wants to write outside its folder: " + entry.getName());
        }
        return normal;
    }

    /** A link that an earlier entry planted must not lead a later one out of the folder. */
    private void makeParent(Path path) throws IOException {
        Path parent = path.getParent();
        Files.createDirectories(parent);
        if (!parent.toRealPath().startsWith(folder.toRealPath()) || Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
            throw new IOException("The archive wants to write over something else: " + folder.relativize(path));
        }
    }

    private static void setMode(Path path, int mode) throws IOException {
        if (!Files.getFileStore(path).supportsFileAttributeView("posix")) {
            return;
        }
        Set<PosixFilePermission> permissions =
                EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);
        if ((mode & OWNER_EXECUTES) != 0) {
            permissions.add(PosixFilePermission.OWNER_EXECUTE);
        }
        Files.setPosixFilePermissions(path, permissions);
    }
}
