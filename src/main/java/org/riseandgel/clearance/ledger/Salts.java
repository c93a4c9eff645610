package org.riseandgel.clearance.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import java.security.SecureRandom;
import java.util.HexFormat;

/** Random bytes that go before a text under a hash, so that nobody finds the text by trying. */
@ApplicationScoped
public class Salts {
    private static final int BYTES = 16;

    private final SecureRandom random = new SecureRandom();

    /** Sixteen unforeseeable bytes, in hexadecimal. */
    public String next() {
        byte[] bytes = new byte[BYTES];
        random.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }
}
