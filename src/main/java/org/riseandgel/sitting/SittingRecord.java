package org.riseandgel.sitting;

import java.time.Instant;
import java.util.UUID;

/**
 * A sitting that was handed in, as evidence for others.
 *
 * @param check the id of the check
 * @param startedAt when it was begun; it counts for the school day of this moment
 * @param items how many items it had
 * @param right how many were right
 * @param criticalWrong how many critical items were wrong or left open
 * @param passed whether it passed by the rule it was begun under
 * @param poolVersion SHA-256 over the check's rule and the versions of every exercise in its pool, as it was begun
 * @param contentHash SHA-256 over what was asked, what was answered and how each item was judged
 * @param coreVersion which rules judged it
 */
public record SittingRecord(
        UUID id,
        UUID person,
        String check,
        Instant startedAt,
        Instant handedInAt,
        int items,
        int right,
        int criticalWrong,
        boolean passed,
        String poolVersion,
        String contentHash,
        String coreVersion) {}
