package org.riseandgel.platform.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.AclEntry;
import java.nio.file.attribute.AclEntryPermission;
import java.nio.file.attribute.AclEntryType;
import java.nio.file.attribute.AclFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;

/**
 * Makes files and folders that only the account running the program may open: POSIX modes 600 and
 * 700 where the file system has them, else an access list with the owner as its only entry.
 */
public final class OwnerOnly {
    private OwnerOnly() {}

    /** Makes the folder, and its parents where missing; a folder that is there keeps its rights. */
    public static void createFolder(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        Files.createDirectories(folder);
        restrict(folder);
    }

    /** Takes everybody else's rights from a file or folder. */
    public static void restrict(Path path) throws IOException {
        if (hasPosixModes(path)) {
            String mode = Files.isDirectory(path) ? "rwx------" : "rw-------";
            Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(mode));
        } else {
            leaveOwnerOnTheAccessList(path);
        }
    }

    /**
     * Writes a text file whole or not at all: the text goes to a restricted file beside it, to the
     * disk, and then takes the name, so that no reader sees half of it and no crash leaves half.
     */
    public static void write(Path file, String text) throws IOException {
        Path draft = file.resolveSibling(file.getFileName() + ".new");
        Files.deleteIfExists(draft);
        Files.createFile(draft);
        restrict(draft);
        try (FileChannel channel = FileChannel.open(draft, StandardOpenOption.WRITE)) {
            ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
        Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        flushFolder(file.toAbsolutePath().getParent());
    }

    /** Brings the names in a folder to the disk, where the system offers it for folders. */
    public static void flushFolder(Path folder) throws IOException {
        if (hasPosixModes(folder)) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }

    /** Brings a folder and all files in it to the disk, so that not even a power cut leaves an empty one. */
    public static void flushTree(Path root) throws IOException {
        List<Path> paths;
        try (Stream<Path> walk = Files.walk(root)) {
            paths = walk.filter(path -> !Files.isSymbolicLink(path)).toList();
        }
        for (Path path : paths) {
            if (Files.isDirectory(path)) {
                flushFolder(path);
            } else {
                flushFile(path);
            }
        }
    }

    private static void flushFile(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    private static boolean hasPosixModes(Path path) throws IOException {
        return Files.getFileStore(path).supportsFileAttributeView("posix");
    }

    private static void leaveOwnerOnTheAccessList(Path path) throws IOException {
        AclFileAttributeView view =
                Files.getFileAttributeView(path, AclFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        if (view == null) {
            throw new IOException("This file system cannot keep " + path + " from other accounts of this computer."
                    + " Choose a data folder on the computer's own disk.");
        }
        view.setAcl(List.of(AclEntry.newBuilder()
                .setType(AclEntryType.ALLOW)
                .setPrincipal(view.getOwner())
                .setPermissions(EnumSet.allOf(AclEntryPermission.class))
                .build()));
    }
}
