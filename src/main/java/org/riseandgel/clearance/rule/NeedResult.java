package org.riseandgel.clearance.rule;

import java.util.Set;
import java.util.UUID;

/**
 * One precondition and what was found for it.
 *
 * @param words what was found, or what is missing
 * @param evidence the events that meet it
 */
public record NeedResult(Need need, boolean met, String words, Set<UUID> evidence) {
    public NeedResult {
        evidence = Set.copyOf(evidence);
    }

    static NeedResult met(Need need, String words, UUID... evidence) {
        return new NeedResult(need, true, words, Set.of(evidence));
    }

    static NeedResult unmet(Need need, String words) {
        return new NeedResult(need, false, words, Set.of());
    }
}
