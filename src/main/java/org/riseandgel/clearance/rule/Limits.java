package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** From when on each reason stands against a clearance if nothing more happens; some lie in the future. */
final class Limits {
    private final Map<Reason, Instant> from = new EnumMap<>(Reason.class);

    /** Notes that a reason stands from an instant on; of several, the first counts. */
    void add(Reason reason, Instant when) {
        from.merge(reason, when, (one, other) -> one.isBefore(other) ? one : other);
    }

    /** Notes that a reason has always stood. */
    void add(Reason reason) {
        add(reason, Instant.MIN);
    }

    /** The reasons that stand at an instant, in their fixed order. */
    List<Reason> reasons(Instant at) {
        return from.entrySet().stream()
                .filter(entry -> !entry.getValue().isAfter(at))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The first instant after this one at which another reason begins to stand. */
    Optional<Instant> next(Instant at) {
        return from.values().stream().filter(when -> when.isAfter(at)).min(Instant::compareTo);
    }

    /** From when on any of these reasons stands, those that stand already. */
    List<Instant> since(List<Reason> reasons, Instant at) {
        return reasons.stream()
                .filter(from::containsKey)
                .map(from::get)
                .filter(when -> !when.isAfter(at))
                .toList();
    }
}
