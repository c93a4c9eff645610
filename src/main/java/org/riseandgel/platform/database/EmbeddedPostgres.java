package org.riseandgel.platform.database;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.function.IntSupplier;
import org.riseandgel.platform.files.OwnerOnly;

/**
 * A PostgreSQL server of the program's own: every committed row is on the disk, it listens to this
 * computer only, on a free port chosen at each start, and lets nobody in without a password. The next
 * start takes the data up again, however the last run ended. The caller makes sure that no second
 * program uses the same folders.
 */
public final class EmbeddedPostgres implements AutoCloseable {
    private static final int STARTS = 20;
    private static final long PAUSE_MILLIS = 500;
    private static final String LIMIT_SECONDS = "60";
    private static final Duration LIMIT = Duration.ofSeconds(90);

    private final Path cluster;
    private final ServerLogs logs;
    private final ServerBinaries binaries;
    private final ServerCommand command;
    private final IntSupplier ports;
    private int port;

    private EmbeddedPostgres(ServerFolders folders, IntSupplier ports) throws IOException {
        this.ports = ports;
        OwnerOnly.createFolder(folders.logs());
        OwnerOnly.createFolder(folders.cluster().toAbsolutePath().getParent());
        logs = new ServerLogs(folders.logs().toRealPath());
        cluster = folders.cluster()
                .toAbsolutePath()
                .getParent()
                .toRealPath()
                .resolve(folders.cluster().getFileName());
        binaries = ServerBinaries.in(folders.binaries());
        command = new ServerCommand(logs.folder());
    }

    /**
     * Starts the server on the folders; on the first start it is unpacked and set up, with its logins
     * and an empty database.
     *
     * @throws DatabaseFailure when the server cannot be started; nothing of it runs then
     */
    public static EmbeddedPostgres start(ServerFolders folders, PasswordFiles passwords) {
        return start(folders, passwords, EmbeddedPostgres::freePort);
    }

    static EmbeddedPostgres start(ServerFolders folders, PasswordFiles passwords, IntSupplier ports) {
        try {
            EmbeddedPostgres server = new EmbeddedPostgres(folders, ports);
            Cluster.ensure(
                    server.cluster,
                    server.binaries,
                    server.command,
                    passwords.admin().toRealPath());
            server.stopLeftover();
            server.startOnFreePort();
            server.prepare(passwords);
            return server;
        } catch (IOException e) {
            throw new DatabaseFailure("The database server could not be started: " + e, e);
        }
    }

    /** Whether a database was already set up in the folders. */
    public static boolean existsIn(ServerFolders folders) {
        return Cluster.existsIn(folders.cluster());
    }

    /** Address of the program's database on this server. */
    public String jdbcUrl() {
        return "jdbc:postgresql://127.0.0.1:" + port + "/" + DatabaseSetup.DATABASE;
    }

    /** Login that owns the tables. */
    public String ownerLogin() {
        return DatabaseSetup.OWNER;
    }

    /** Login of the running program. */
    public String appLogin() {
        return DatabaseSetup.APP;
    }

    /** Process number of the server, or empty when it no longer runs. */
    public Optional<Long> processNumber() {
        try {
            return new PostmasterFile(cluster).server().map(ProcessHandle::pid);
        } catch (IOException e) {
            throw new DatabaseFailure("It cannot be told whether the database server runs: " + e, e);
        }
    }

    /** Stops the server; open connections are ended, what was committed is kept. */
    @Override
    public void close() {
        try {
            stopIfRunning(new PostmasterFile(cluster));
        } catch (IOException e) {
            throw new DatabaseFailure("The database server could not be stopped: " + e, e);
        }
    }

    private void stopLeftover() throws IOException {
        PostmasterFile postmaster = new PostmasterFile(cluster);
        stopIfRunning(postmaster);
        postmaster.forgetReusedNumber();
    }

    private void stopIfRunning(PostmasterFile postmaster) throws IOException {
        Optional<ProcessHandle> server = postmaster.server();
        if (server.isPresent()) {
            stop();
            awaitEnd(server.get());
        }
    }

    /** The server reports its stop a moment before its process is gone. */
    private static void awaitEnd(ProcessHandle process) {
        for (int left = 100; left > 0 && process.isAlive(); left--) {
            pause(20);
        }
    }

    private void stop() throws IOException {
        ServerCommand.Outcome outcome = control("stop", "--mode=fast");
        if (!outcome.succeeded()) {
            outcome = control("stop", "--mode=immediate");
        }
        if (!outcome.succeeded()) {
            throw new DatabaseFailure(
                    "The database server on " + cluster + " could not be stopped:\n" + outcome.output());
        }
    }

    private void startOnFreePort() throws IOException {
        logs.dropOldest();
        for (int left = STARTS; left > 0; left--) {
            if (startOnce(left == 1)) {
                return;
            }
        }
    }

    private boolean startOnce(boolean last) throws IOException {
        port = ports.getAsInt();
        ServerConfiguration.write(cluster, logs.folder(), port);
        Files.deleteIfExists(logs.startFile());
        ServerCommand.Outcome outcome = control("start", "--log=" + logs.startFile());
        if (outcome.succeeded()) {
            return true;
        }
        String reason = logs.lastLines();
        if (last || !passes(reason)) {
            throw new DatabaseFailure("The database server could not be started:\n" + outcome.output() + "\n" + reason);
        }
        pause(PAUSE_MILLIS);
        return false;
    }

    /** Whether a failed start may go well in a moment: somebody took the port, or killed workers are still ending. */
    private boolean passes(String reason) {
        return reason.contains("already running on port " + port)
                || reason.contains("pre-existing shared memory block");
    }

    private void prepare(PasswordFiles passwords) {
        try {
            DatabaseSetup.ensure(port, passwords);
        } catch (DatabaseFailure e) {
            close();
            throw e;
        }
    }

    private ServerCommand.Outcome control(String... arguments) throws IOException {
        String[] all = new String[arguments.length + 4];
        System.arraycopy(arguments, 0, all, 0, arguments.length);
        all[arguments.length] = "--pgdata=" + cluster;
        all[arguments.length + 1] = "--wait";
        all[arguments.length + 2] = "--timeout=" + LIMIT_SECONDS;
        all[arguments.length + 3] = "--silent";
        return command.run(LIMIT, binaries.program("pg_ctl"), all);
    }

    private static int freePort() {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            return socket.getLocalPort();
        } catch (IOException e) {
            throw new DatabaseFailure("There is no free port on this computer: " + e.getMessage(), e);
        }
    }

    private static void pause(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new DatabaseFailure("The wait for the database server was interrupted.", e);
        }
    }
}
