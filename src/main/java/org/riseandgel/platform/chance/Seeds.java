package org.riseandgel.platform.chance;

import jakarta.enterprise.context.ApplicationScoped;
import java.security.SecureRandom;

/** Where seeds come from: unforeseeable, and stored by whoever asks, so that all chance can be played again. */
@ApplicationScoped
public class Seeds {
    private final SecureRandom random = new SecureRandom();

    /** A seed that nobody can foresee. */
    public long next() {
        return random.nextLong();
    }
}
