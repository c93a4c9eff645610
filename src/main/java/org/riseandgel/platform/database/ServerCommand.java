package org.riseandgel.platform.database;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.riseandgel.platform.files.OwnerOnly;

/** Runs one of the server's programs to its end and keeps what it said. */
final class ServerCommand {
    private final Path outputs;

    ServerCommand(Path outputs) {
        this.outputs = outputs;
    }

    /**
     * Result of a program that ended.
     *
     * @param code its exit code, 0 when all went well
     * @param output all that it printed
     */
    record Outcome(int code, String output) {
        boolean succeeded() {
            return code == 0;
        }
    }

    /**
     * Runs the program with the arguments.
     *
     * @throws DatabaseFailure when it cannot be run at all or is not done within the limit
     */
    Outcome run(Duration limit, Path program, String... arguments) throws IOException {
        // The output goes to a file: a pipe would stay open as long as the server that the program leaves running.
        Path output = outputs.resolve(program.getFileName() + ".out");
        OwnerOnly.write(output, "");
        Process process = start(program, arguments, output);
        if (!waitFor(process, limit)) {
            process.destroyForcibly();
            throw new DatabaseFailure(
                    program.getFileName() + " was not done within " + limit.toSeconds() + " seconds:\n" + read(output));
        }
        return new Outcome(process.exitValue(), read(output) + hint(output));
    }

    private Process start(Path program, String[] arguments, Path output) {
        List<String> line = new ArrayList<>(SuperUser.wayAround());
        line.add(program.toString());
        line.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(line)
                .directory(outputs.toFile())
                .redirectErrorStream(true)
                .redirectOutput(output.toFile());
        // Settings meant for other PostgreSQL programs of this account must not reach ours.
        builder.environment().keySet().removeIf(name -> name.startsWith("PG"));
        builder.environment().put("LC_ALL", "C");
        try {
            return builder.start();
        } catch (IOException e) {
            throw new DatabaseFailure("The program " + line.get(0) + " could not be run: " + e.getMessage(), e);
        }
    }

    private static boolean waitFor(Process process, Duration limit) {
        try {
            return process.waitFor(limit.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
            throw new DatabaseFailure("The start was interrupted while the database server was at work.", e);
        }
    }

    private static String hint(Path output) throws IOException {
        return read(output).startsWith("unshare:") ? SuperUser.ADVICE : "";
    }

    private static String read(Path output) throws IOException {
        return new String(Files.readAllBytes(output), StandardCharsets.UTF_8);
    }
}
