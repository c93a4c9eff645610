package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** What a scope answers to a question from an instant on, as long as nothing more happens: it only gets worse. */
record Outlook(
        Scope scope,
        UUID grant,
        LocalDate validThrough,
        boolean supervised,
        UUID supervisor,
        boolean single,
        Limits limits) {
    Standing at(Instant when) {
        List<Reason> reasons = limits.reasons(when);
        Status good = supervised ? Status.SUPERVISED_ONLY : Status.CLEARED;
        Status status = reasons.isEmpty() ? good : Status.NOT_CLEARED;
        return new Standing(
                status,
                reasons,
                scope.id(),
                grant,
                validThrough,
                reasons.isEmpty() ? limits.next(when).orElse(null) : null,
                single,
                status == Status.SUPERVISED_ONLY ? supervisor : null);
    }
}
