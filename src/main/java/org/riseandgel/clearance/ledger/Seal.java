package org.riseandgel.clearance.ledger;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.HexFormat;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;

/** The hashes of the register: SHA-256 (FIPS 180-4) over bytes that anybody can put together from an export. */
public final class Seal {
    /** What stands before the first line. */
    public static final String BEGINNING = "0".repeat(64);

    private static final Pattern SALT = Pattern.compile("[0-9a-f]{32}");
    private static final HexFormat HEX = HexFormat.of();
    private static final DateTimeFormatter MICROS =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSSSS'Z'").withZone(ZoneOffset.UTC);

    private Seal() {}

    /** An instant with six decimals of the second. */
    public static String micros(Instant moment) {
        return MICROS.format(moment);
    }

    /** Hash of salt and text. */
    public static String ofText(String salt, String text) {
        MessageDigest sha = sha256();
        sha.update(HEX.parseHex(salt));
        return HEX.formatHex(sha.digest(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Hash of bytes. */
    public static String of(byte[] bytes) {
        return HEX.formatHex(sha256().digest(bytes));
    }

    /** Hash of a line: of its parts, one under the other, after the word “register”. */
    public static String ofLine(long number, UUID id, Instant recorded, String contentHash, String previous) {
        String parts =
                String.join("\n", "register", "" + number, id.toString(), micros(recorded), contentHash, previous);
        return of(parts.getBytes(StandardCharsets.UTF_8));
    }

    /** What is wrong with a line by itself; empty when it is sealed rightly. */
    public static Optional<String> problem(Line line) {
        if (!line.isPurged() && !matches(line)) {
            return Optional.of("what it says does not match its hash");
        }
        return ofLine(line.number(), line.id(), line.recorded(), line.contentHash(), line.previous())
                        .equals(line.hash())
                ? Optional.empty()
                : Optional.of("its place, id, time or hashes do not match its hash");
    }

    private static boolean matches(Line line) {
        return line.salt() != null
                && SALT.matcher(line.salt()).matches()
                && ofText(line.salt(), line.content()).equals(line.contentHash());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("SHA-256 is missing from this Java", e);
        }
    }
}
