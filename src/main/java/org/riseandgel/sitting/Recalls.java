package org.riseandgel.sitting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.course.Check;

/** Which recall checks wait for a person now. Computed when asked: no job has to run for one to come. */
@ApplicationScoped
class Recalls {
    private final Instance<ClearedSince> register;
    private final Clock clock;

    Recalls(Instance<ClearedSince> register, Clock clock) {
        this.register = register;
        this.clock = clock;
    }

    /** Since when the recall check waits for the person who began it at these times; empty when it does not. */
    Optional<Instant> waitingSince(Check check, UUID person, List<Instant> begun) {
        Optional<Instant> cleared = register.isResolvable() ? register.get().clearedSince(person) : Optional.empty();
        return cleared.flatMap(
                since -> RecallRule.waitingSince(check.recallDays(), person, since, begun, clock.instant()));
    }
}
