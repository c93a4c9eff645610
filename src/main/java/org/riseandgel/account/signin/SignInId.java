package org.riseandgel.account.signin;

import java.nio.ByteBuffer;
import java.security.SecureRandom;
import java.util.Base64;
import org.riseandgel.platform.web.Secret;

/** The random id in the cookie: 128 bits in URL-safe base64. The server keeps only its SHA-256 (FIPS 180-4). */
final class SignInId {
    private static final int BYTES = 16;
    private static final int LETTERS = 22;
    private static final SecureRandom RANDOM = new SecureRandom();

    private SignInId() {}

    static String make() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** Whether a cookie can be an id at all, so that nothing else is looked up. */
    static boolean isPossible(String cookie) {
        return cookie.length() == LETTERS;
    }

    static byte[] hash(String id) {
        return Secret.hash(id);
    }

    /** The hash as something that can be compared and used as a key. */
    static ByteBuffer key(byte[] hash) {
        return ByteBuffer.wrap(hash).asReadOnlyBuffer();
    }
}
