package org.riseandgel;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The packaged program as a process of its own, for tests that start, kill and stop it. It listens on
 * a free port, keeps its data in the given folder, and sees no setting but the given ones.
 */
public final class AppProcess implements AutoCloseable {
    private static final Path JAR =
            Path.of("target", "quarkus-app", "quarkus-run.jar").toAbsolutePath();
    private static final Pattern READY = Pattern.compile("ready at (http://\\S+)");
    private static final Duration LIMIT = Duration.ofSeconds(90);

    private final Process process;
    private final Path dataDir;
    private final Path output;

    private AppProcess(Process process, Path dataDir, Path output) {
        this.process = process;
        this.dataDir = dataDir;
        this.output = output;
    }

    /** Starts the program, with options for the JVM in front of its jar, and waits until it answers. */
    public static AppProcess start(Path dataDir, Map<String, String> environment, String... options)
            throws IOException {
        AppProcess app = launch(dataDir, environment, options);
        try {
            app.awaitReady();
            return app;
        } catch (RuntimeException | IOException e) {
            app.close();
            throw e;
        }
    }

    /** Starts the program and returns at once. */
    public static AppProcess launch(Path dataDir, Map<String, String> environment, String... options)
            throws IOException {
        Path output = Files.createTempFile(dataDir.toAbsolutePath().getParent(), "output-", ".txt");
        ProcessBuilder builder = new ProcessBuilder(commandLine(dataDir, options))
                .directory(output.getParent().toFile())
                .redirectErrorStream(true)
                .redirectOutput(output.toFile());
        builder.environment().keySet().removeIf(name -> name.startsWith("QUARKUS_") || name.startsWith("RISEANDGEL_"));
        builder.environment().putAll(environment);
        return new AppProcess(builder.start(), dataDir, output);
    }

    private static List<String> commandLine(Path dataDir, String... options) {
        List<String> line = new ArrayList<>();
        line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        line.add("-Xmx256m");
        line.add("-Dquarkus.http.port=0");
        line.add("-Driseandgel.data-dir=" + dataDir);
        line.add("-Driseandgel.postgres-dir=" + PostgresForTests.BINARIES);
        // The last one wins, so a test may set any of the above anew.
        line.addAll(List.of(options));
        line.add("-jar");
        line.add(JAR.toString());
        return line;
    }

    /** Address at which the program answers, without a slash at its end. */
    public URI url() {
        return readyAt().orElseThrow(() -> new IllegalStateException("Not ready:\n" + output()));
    }

    /** All that the program has printed so far. */
    public String output() {
        try {
            return Files.readString(output);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    public boolean isAlive() {
        return process.isAlive();
    }

    public long processNumber() {
        return process.pid();
    }

    /** The database server that runs on the data folder, if one does. */
    public Optional<ProcessHandle> databaseServer() {
        try {
            Path file = dataDir.resolve("database").resolve("postmaster.pid");
            if (!Files.exists(file)) {
                return Optional.empty();
            }
            return ProcessHandle.of(Long.parseLong(Files.readAllLines(file).get(0)))
                    .filter(ProcessHandle::isAlive);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Ends the program with no chance to tidy up; its database server stays behind. */
    public void killHard() {
        process.destroyForcibly();
        awaitExit();
    }

    /** Ends the program and its database server with no chance to tidy up, as a power cut does. */
    public void killAll() {
        Optional<ProcessHandle> database = databaseServer();
        killHard();
        database.ifPresent(handle -> {
            handle.destroyForcibly();
            handle.onExit().orTimeout(LIMIT.toSeconds(), TimeUnit.SECONDS).join();
        });
    }

    /** Asks the program to end, waits for it, and gives its exit code. */
    public int stop() {
        process.destroy();
        return awaitExit();
    }

    /** Waits until the program has ended by itself and gives its exit code. */
    public int awaitExit() {
        try {
            if (!process.waitFor(LIMIT.toSeconds(), TimeUnit.SECONDS)) {
                throw new IllegalStateException("Still running:\n" + output());
            }
            return process.exitValue();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** Leaves nothing behind, whatever the test did. */
    @Override
    public void close() {
        if (process.isAlive()) {
            killAll();
        }
        databaseServer().ifPresent(ProcessHandle::destroyForcibly);
    }

    /** Code of the program's answer to a plain request for the path. */
    public int statusOf(String path) throws IOException {
        try {
            HttpRequest request = HttpRequest.newBuilder(url().resolve(path))
                    .timeout(Duration.ofSeconds(20))
                    .build();
            return HttpClient.newHttpClient()
                    .send(request, HttpResponse.BodyHandlers.discarding())
                    .statusCode();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private Optional<URI> readyAt() {
        Matcher matcher = READY.matcher(output());
        return matcher.find() ? Optional.of(URI.create(matcher.group(1))) : Optional.empty();
    }

    private void awaitReady() throws IOException {
        long end = System.nanoTime() + LIMIT.toNanos();
        while (readyAt().isEmpty() || statusOf("/q/health/ready") != 200) {
            if (!process.isAlive()) {
                throw new IllegalStateException("Ended with code " + process.exitValue() + ":\n" + output());
            }
            if (System.nanoTime() > end) {
                throw new IllegalStateException("Not ready in " + LIMIT + ":\n" + output());
            }
            pause();
        }
    }

    private static void pause() {
        try {
            Thread.sleep(50);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
