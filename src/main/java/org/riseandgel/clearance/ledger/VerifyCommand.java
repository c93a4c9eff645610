package org.riseandgel.clearance.ledger;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** {@code verify-register FILE}: checks an export of the register without database or network. */
public final class VerifyCommand {
    /** The word that starts it. */
    public static final String NAME = "verify-register";

    private static final int UNREADABLE = 2;

    private VerifyCommand() {}

    /** Runs on what stands behind the command's name; 0 when the file is sound, 1 when not, 2 when it cannot be read. */
    public static int run(List<String> files, PrintStream out, PrintStream err) {
        if (files.size() != 1) {
            err.println("Write: " + NAME + " FILE, where FILE is an export of the register.");
            return UNREADABLE;
        }
        try {
            byte[] bytes = Files.readAllBytes(Path.of(files.get(0)));
            Verification.Report report = Verification.ofFile(new String(bytes, StandardCharsets.UTF_8));
            report.findings().forEach(finding -> out.println(finding));
            out.printf(
                    "%d lines, ending with %s%nSHA-256 of the file: %s%n%s%n",
                    report.lines(),
                    report.head(),
                    Seal.of(bytes),
                    report.isSound()
                            ? "Sound."
                            : "Not sound: " + report.findings().size() + " findings.");
            return report.isSound() ? 0 : 1;
        } catch (IOException e) {
            err.println("The file cannot be read: " + e.getMessage());
            return UNREADABLE;
        }
    }
}
