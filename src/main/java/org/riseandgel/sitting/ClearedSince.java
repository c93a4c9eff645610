package org.riseandgel.sitting;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** Who is cleared. Whoever keeps the register answers; without a register nobody is, and no recall check comes. */
public interface ClearedSince {
    /** Since when the person has the clearance that is valid now; of several, the first. Empty when they have none. */
    Optional<Instant> clearedSince(UUID person);
}
