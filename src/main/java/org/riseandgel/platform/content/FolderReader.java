package org.riseandgel.platform.content;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reads one of the two content folders, {@code lessons} or {@code exercises}, from a disk or from inside an archive.
 *
 * <p>Only text files of the known kinds are read, each up to {@value #LARGEST} bytes; nothing outside the folder is
 * ever opened, not even through a link. What is refused is reported, never dropped in silence.
 */
final class FolderReader {
    static final int LARGEST = 512 * 1024;
    static final int MOST_FILES = 5_000;
    private static final int DEEPEST = 4;

    private final Path root;
    private final String name;
    private final Set<String> types;
    private final List<ContentFile> files = new ArrayList<>();
    private final List<ContentFault> faults = new ArrayList<>();

    private FolderReader(Path root, String name, Set<String> types) {
        this.root = root;
        this.name = name;
        this.types = types;
    }

    /** Reads a folder that goes by the given name in paths; types are the endings that may lie in it, without a dot. */
    static ContentFiles read(Path root, String name, Set<String> types) {
        FolderReader reader = new FolderReader(root, name, types);
        try {
            entries(root).forEach(reader::look);
        } catch (IOException e) {
            reader.faults.add(new ContentFault(name, "could not be read (" + e.getMessage() + "); check the folder"));
        }
        return new ContentFiles(reader.files, reader.faults);
    }

    /** The names, sizes and times of everything in the folder, as one text that changes when any of them does. */
    static String stat(Path root) {
        StringBuilder all = new StringBuilder();
        try {
            for (Path path : entries(root)) {
                all.append(root.relativize(path))
                        .append(' ')
                        .append(statOf(path))
                        .append('\n');
            }
        } catch (IOException unreadable) {
            all.append("unreadable");
        }
        return all.toString();
    }

    private static String statOf(Path path) {
        try {
            BasicFileAttributes of = Files.readAttributes(path, BasicFileAttributes.class);
            return of.isDirectory() ? "folder" : of.size() + " " + of.lastModifiedTime() + " " + of.fileKey();
        } catch (IOException goneOrDangling) {
            return "unreadable";
        }
    }

    /** Everything below the root in a settled order, without following links and without what editors leave behind. */
    private static List<Path> entries(Path root) throws IOException {
        try (Stream<Path> walk = Files.walk(root, DEEPEST)) {
            return walk.filter(path -> !path.equals(root) && !isHidden(root.relativize(path)))
                    .sorted(Comparator.comparing(Path::toString))
                    .limit(MOST_FILES + 1L)
                    .toList();
        } catch (NoSuchFileException missing) {
            return List.of();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static boolean isHidden(Path relative) {
        for (Path part : relative) {
            String text = part.toString();
            if (text.startsWith(".") || text.startsWith("#") || text.endsWith("~")) {
                return true;
            }
        }
        return false;
    }

    private void look(Path path) {
        String shown = name + "/" + root.relativize(path).toString().replace('\\', '/');
        if (shown.endsWith("/")) {
            shown = shown.substring(0, shown.length() - 1);
        }
        if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        if (files.size() >= MOST_FILES) {
            faults.add(new ContentFault(shown, "there are more than " + MOST_FILES + " files; keep fewer in " + name));
        } else if (!types.contains(ending(shown))) {
            faults.add(new ContentFault(shown, "is not a kind of file that belongs here; use one of " + words(types)));
        } else if (leavesTheFolder(path)) {
            faults.add(new ContentFault(shown, "is a link that leads out of the folder; put the file itself here"));
        } else {
            take(path, shown);
        }
    }

    private void take(Path path, String shown) {
        try (InputStream in = Files.newInputStream(path)) {
            byte[] bytes = in.readNBytes(LARGEST + 1);
            if (bytes.length > LARGEST) {
                faults.add(new ContentFault(shown, "is larger than " + LARGEST / 1024 + " KiB; make it smaller"));
                return;
            }
            files.add(new ContentFile(shown, decode(bytes)));
        } catch (CharacterCodingException e) {
            faults.add(new ContentFault(shown, "is not UTF-8 text; save it as UTF-8"));
        } catch (IOException e) {
            faults.add(new ContentFault(shown, "could not be read (" + e.getMessage() + "); check its permissions"));
        }
    }

    private static String decode(byte[] bytes) throws CharacterCodingException {
        String text = StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(bytes))
                .toString();
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private boolean leavesTheFolder(Path path) {
        if (!Files.isSymbolicLink(path)) {
            return false;
        }
        try {
            return !path.toRealPath().startsWith(root.toRealPath());
        } catch (IOException danglingOrForbidden) {
            return true;
        }
    }

    private static String ending(String shown) {
        int dot = shown.lastIndexOf('.');
        return dot < 0 ? "" : shown.substring(dot + 1);
    }

    private static String words(Set<String> types) {
        return String.join(", ", types.stream().sorted().map(type -> "." + type).toList());
    }
}
