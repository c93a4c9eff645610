package org.riseandgel.clearance.rule;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * Whether a decision may be made now, precondition by precondition.
 *
 * @param singleInstructor whether it would be a single-instructor decision
 * @param supervisor who would have to be there; null for those of age
 * @param validThrough the last day it would hold; null where that is not known
 * @param renews the grant before it in the same scope; null for the first
 * @param sdsRevision the revision of the sheet in force; null when there is none
 * @param policy the version of the policy in force; null when there is none
 */
public record Judgement(
        List<NeedResult> needs,
        boolean singleInstructor,
        UUID supervisor,
        LocalDate validThrough,
        UUID renews,
        UUID sdsRevision,
        String policy) {
    public Judgement {
        needs = List.copyOf(needs);
    }

    /** Whether every precondition is met. */
    public boolean isAllowed() {
        return needs.stream().allMatch(NeedResult::met);
    }

    /** The preconditions that are not met, in their order. */
    public List<Need> unmet() {
        return needs.stream().filter(need -> !need.met()).map(NeedResult::need).toList();
    }

    /** The events that it rests on. */
    public Set<UUID> evidence() {
        return needs.stream().flatMap(need -> need.evidence().stream()).collect(Collectors.toUnmodifiableSet());
    }
}
