package org.riseandgel.clearance.rule;

import java.util.Optional;
import java.util.UUID;

/** What an event says. */
public sealed interface Body permits Setting, Evidence, Decision, Keeping {
    /** Whom the event is about; empty when it concerns everybody. */
    default Optional<UUID> subject() {
        return Optional.empty();
    }
}
