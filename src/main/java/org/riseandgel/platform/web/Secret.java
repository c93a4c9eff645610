package org.riseandgel.platform.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;

/**
 * A secret that opens something for whoever has it: 256 random bits in URL-safe base64. The server keeps only its SHA-256
 * (FIPS 180-4), so that a copy of the database opens nothing.
 */
public final class Secret {
    private static final int BYTES = 32;
    private static final int LETTERS = 43;
    private static final SecureRandom RANDOM = new SecureRandom();

    private Secret() {}

    /** A fresh secret. */
    public static String make() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** Whether a text can be such a secret at all, so that nothing else is looked up. */
    public static boolean isPossible(String text) {
        return text.length() == LETTERS;
    }

    /** What is kept of a secret. */
    public static byte[] hash(String secret) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("SHA-256 is missing from this Java", e);
        }
    }
}
