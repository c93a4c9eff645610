package org.riseandgel.platform.database;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.riseandgel.platform.files.OwnerOnly;

/** The file in which a running server notes its process; it stays behind when the server is killed. */
final class PostmasterFile {
    /** Above the highest process number of any system the server runs on, so nobody has it. */
    private static final String NOBODY = String.valueOf(Integer.MAX_VALUE);

    private final Path cluster;
    private final Path file;

    PostmasterFile(Path cluster) {
        this.cluster = cluster;
        this.file = cluster.resolve("postmaster.pid");
    }

    /** The server that runs on this very folder, if one does. */
    Optional<ProcessHandle> server() throws IOException {
        return process().filter(this::isServerOfThisFolder);
    }

    /**
     * When the noted number now belongs to some other program, the server would take that program for
     * itself and refuse to start. The number is replaced and the rest of the file kept, because the
     * server finds in it whether workers of the killed one are still writing.
     */
    void forgetReusedNumber() throws IOException {
        Optional<ProcessHandle> process = process();
        if (process.isPresent() && !isServerOfThisFolder(process.get())) {
            List<String> lines = new ArrayList<>(lines());
            lines.set(0, NOBODY);
            OwnerOnly.write(file, String.join("\n", lines) + "\n");
        }
    }

    private Optional<ProcessHandle> process() throws IOException {
        List<String> lines = lines();
        if (lines.isEmpty() || !lines.get(0).strip().matches("[1-9][0-9]{0,9}")) {
            return Optional.empty();
        }
        return ProcessHandle.of(Long.parseLong(lines.get(0).strip())).filter(ProcessHandle::isAlive);
    }

    private List<String> lines() throws IOException {
        return Files.exists(file) ? Files.readAllLines(file, StandardCharsets.UTF_8) : List.of();
    }

    private boolean isServerOfThisFolder(ProcessHandle process) {
        return isPostgres(process) && namesThisFolder(process);
    }

    private static boolean isPostgres(ProcessHandle process) {
        return process.info()
                .command()
                .map(command -> Path.of(command).getFileName().toString())
                .filter(name -> name.equals("postgres") || name.equals("postgres.exe"))
                .isPresent();
    }

    /** Windows does not tell the arguments; there the program's name has to do. */
    private boolean namesThisFolder(ProcessHandle process) {
        return process.info()
                .arguments()
                .map(arguments -> Arrays.asList(arguments).contains(cluster.toString()))
                .orElse(true);
    }
}
