package org.riseandgel.platform.database;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * The kind of computer, in the words the server archives use.
 *
 * @param system {@code linux}, {@code darwin} or {@code windows}
 * @param processor {@code x86_64} or {@code arm_64}
 */
record ComputerKind(String system, String processor) {
    private static final String WAY_OUT = " Name a PostgreSQL server of your own with quarkus.datasource.jdbc.url.";

    static ComputerKind here() {
        ComputerKind kind = of(System.getProperty("os.name"), System.getProperty("os.arch"));
        if (kind.system.equals("linux") && hasMuslOnly()) {
            throw new DatabaseFailure(
                    "The built-in database server needs the GNU C library, and this Linux has musl instead." + WAY_OUT);
        }
        return kind;
    }

    static ComputerKind of(String osName, String osArch) {
        String system = system(osName.toLowerCase(Locale.ROOT));
        String processor = processor(osArch.toLowerCase(Locale.ROOT));
        // Windows on ARM runs programs for x86-64, and there is no archive of its own.
        return new ComputerKind(system, system.equals("windows") ? "x86_64" : processor);
    }

    boolean isWindows() {
        return system.equals("windows");
    }

    String archiveName() {
        return "postgres-" + system + "-" + processor + ".txz";
    }

    String program(String name) {
        return isWindows() ? name + ".exe" : name;
    }

    private static String system(String name) {
        if (name.startsWith("linux")) {
            return "linux";
        }
        if (name.startsWith("mac") || name.startsWith("darwin")) {
            return "darwin";
        }
        if (name.startsWith("windows")) {
            return "windows";
        }
        throw new DatabaseFailure("There is no built-in database server for the system " + name + "." + WAY_OUT);
    }

    private static String processor(String arch) {
        return switch (arch) {
            case "amd64", "x86_64" -> "x86_64";
            case "aarch64", "arm64" -> "arm_64";
            default ->
                throw new DatabaseFailure(
                        "There is no built-in database server for the processor " + arch + "." + WAY_OUT);
        };
    }

    private static boolean hasMuslOnly() {
        return hasLoader("ld-musl-*") && !hasLoader("ld-linux-*") && !Files.exists(Path.of("/lib64"));
    }

    private static boolean hasLoader(String pattern) {
        try (DirectoryStream<Path> found = Files.newDirectoryStream(Path.of("/lib"), pattern)) {
            return found.iterator().hasNext();
        } catch (IOException e) {
            return false;
        }
    }
}
