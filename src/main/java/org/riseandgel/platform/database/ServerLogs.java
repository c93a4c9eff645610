package org.riseandgel.platform.database;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The server's log files: the newest are kept, and their last lines explain a start that failed. */
final class ServerLogs {
    private static final int KEPT_FILES = 20;
    private static final int SHOWN_LINES = 20;

    private final Path folder;

    ServerLogs(Path folder) {
        this.folder = folder;
    }

    Path folder() {
        return folder;
    }

    /** What the server prints before its own log is open. */
    Path startFile() {
        return folder.resolve("postgres-start.out");
    }

    void dropOldest() throws IOException {
        List<Path> files = files();
        for (Path file : files.subList(0, Math.max(0, files.size() - KEPT_FILES))) {
            Files.delete(file);
        }
    }

    String lastLines() throws IOException {
        StringBuilder text = new StringBuilder();
        if (Files.exists(startFile())) {
            text.append(end(startFile()));
        }
        List<Path> files = files();
        if (!files.isEmpty()) {
            text.append(end(files.get(files.size() - 1)));
        }
        return text.toString();
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(ServerLogs::isServerLog).sorted().toList();
        }
    }

    private static boolean isServerLog(Path path) {
        String name = path.getFileName().toString();
        return name.startsWith("postgres-") && name.endsWith(".log");
    }

    private static String end(Path file) throws IOException {
        // Not a strict reading: a log may hold bytes in the encoding of the operating system.
        List<String> lines = new String(Files.readAllBytes(file), StandardCharsets.UTF_8)
                .lines()
                .toList();
        return String.join("\n", lines.subList(Math.max(0, lines.size() - SHOWN_LINES), lines.size())) + "\n";
    }
}
