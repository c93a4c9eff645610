package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * What the register says about a question at an instant.
 *
 * @param reasons everything that stands against it, in the fixed order; empty when cleared or supervised only
 * @param scope the scope that the answer comes from; null when there is none
 * @param grant the event that granted it; null when there is none
 * @param validThrough the last day of the grant; null when there is none
 * @param holdsUntil the first instant at which the answer is worse if nothing else happens; null when it is as bad as it
 *     gets already
 * @param singleInstructor whether it rests on a single-instructor decision
 * @param supervisor who has to be there; null unless supervised only
 */
public record Standing(
        Status status,
        List<Reason> reasons,
        UUID scope,
        UUID grant,
        LocalDate validThrough,
        Instant holdsUntil,
        boolean singleInstructor,
        UUID supervisor) {
    public Standing {
        reasons = List.copyOf(reasons);
    }

    /** An answer without any grant behind it. */
    public static Standing none(Reason... reasons) {
        return new Standing(Status.NOT_CLEARED, List.of(reasons), null, null, null, null, false, null);
    }

    /** The first reason, if not cleared. */
    public Optional<Reason> firstReason() {
        return reasons.stream().findFirst();
    }

    /** Whether this person may do it alone. */
    public boolean isCleared() {
        return status == Status.CLEARED;
    }
}
