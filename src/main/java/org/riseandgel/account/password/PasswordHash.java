package org.riseandgel.account.password;

import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.text.Normalizer;
import java.util.Base64;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;

/**
 * A password as it is stored: PBKDF2 (RFC 8018) with HMAC-SHA-512, written {@code
 * pbkdf2-sha512$<rounds>$<salt>$<hash>} with salt and hash in base64. Passwords are brought to Unicode form NFC first,
 * so that the same letters typed on two computers are the same.
 *
 * @param rounds how often the function is repeated
 * @param salt 16 random bytes
 * @param hash 64 bytes
 */
record PasswordHash(int rounds, byte[] salt, byte[] hash) {
    private static final String KIND = "pbkdf2-sha512";
    private static final int HASH_BITS = 512;

    /** Hashes a password. */
    static PasswordHash of(String password, int rounds, byte[] salt) {
        return new PasswordHash(rounds, salt, derive(password, rounds, salt));
    }

    /** Reads what {@link #stored()} wrote. */
    static PasswordHash read(String stored) {
        String[] parts = stored.split("\\$");
        if (parts.length != 4 || !parts[0].equals(KIND)) {
            throw new IllegalArgumentException("a stored password has an unknown form: " + parts[0]);
        }
        Base64.Decoder base64 = Base64.getDecoder();
        return new PasswordHash(Integer.parseInt(parts[1]), base64.decode(parts[2]), base64.decode(parts[3]));
    }

    String stored() {
        Base64.Encoder base64 = Base64.getEncoder().withoutPadding();
        return String.join("$", KIND, "" + rounds, base64.encodeToString(salt), base64.encodeToString(hash));
    }

    boolean matches(String password) {
        return MessageDigest.isEqual(hash, derive(password, rounds, salt));
    }

    private static byte[] derive(String password, int rounds, byte[] salt) {
        char[] letters = Normalizer.normalize(password, Normalizer.Form.NFC).toCharArray();
        PBEKeySpec spec = new PBEKeySpec(letters, salt, rounds, HASH_BITS);
        try {
            return SecretKeyFactory.getInstance("PBKDF2WithHmacSHA512")
                    .generateSecret(spec)
                    .getEncoded();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("PBKDF2 with HMAC-SHA-512 is missing from this Java", e);
        } finally {
            spec.clearPassword();
        }
    }
}
