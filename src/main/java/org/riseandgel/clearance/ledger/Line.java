package org.riseandgel.clearance.ledger;

import java.time.Instant;
import java.util.UUID;

/**
 * A line of the register as it is kept. Hashes and salt are in hexadecimal.
 *
 * @param content the text that the content hash is over; null once it was purged
 * @param salt sixteen random bytes before the content, so that a hash that stays behind tells nothing; null like it
 * @param contentHash SHA-256 over salt and content
 * @param previous hash of the line before; zeros for the first
 * @param hash SHA-256 over place, id, time of recording, content hash and previous hash
 */
public record Line(
        long number,
        UUID id,
        Instant recorded,
        String content,
        String salt,
        String contentHash,
        String previous,
        String hash) {
    /** Whether what it said was erased. */
    public boolean isPurged() {
        return content == null;
    }
}
