package org.riseandgel.clearance;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.clearance.rule.Evidence;

/** Where the register learns of sittings. */
public interface KnowledgeEvidence {
    /** All sittings of a person that count for the register and were handed in, as the register writes them down. */
    List<Evidence.SittingNoted> handedIn(UUID person);

    /** The version of the pool of items from which a sitting at a check would be drawn now; empty when there is no such check. */
    Optional<String> currentPool(String check);
}
