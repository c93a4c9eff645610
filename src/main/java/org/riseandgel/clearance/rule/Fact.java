package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.util.UUID;

/** An event as it is known after all corrections. */
public record Fact<T extends Body>(long number, UUID id, Instant effective, T body) {
    /** Whether this came after something, in the world and in the register: only then was it known. */
    boolean knewOf(Fact<?> other) {
        return effective.isAfter(other.effective) && number > other.number;
    }

    /** Whether this undoes something: it happened no earlier, or the other was decided without knowing of it. */
    boolean undoes(Fact<?> other) {
        return !effective.isBefore(other.effective) || number > other.number;
    }
}
