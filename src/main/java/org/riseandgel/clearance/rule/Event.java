package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.util.UUID;

/**
 * A line of the register. Lines are added and never changed.
 *
 * @param number its place in the register, counted from 1
 * @param effective when it happened in the world
 * @param recorded when the register learned of it; never before it happened
 * @param recordedBy who wrote it down; null when the program did
 */
public record Event(long number, UUID id, Instant effective, Instant recorded, UUID recordedBy, Body body) {
    public Event {
        if (id == null || effective == null || recorded == null || body == null || number < 1) {
            throw new IllegalArgumentException("An event has a number, an id, two times and says something.");
        }
        if (effective.isAfter(recorded)) {
            throw new IllegalArgumentException(
                    "An event cannot be recorded at %s before it happens at %s.".formatted(recorded, effective));
        }
    }
}
