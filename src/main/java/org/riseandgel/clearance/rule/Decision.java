package org.riseandgel.clearance.rule;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** What was decided about one person. */
public sealed interface Decision extends Body {
    UUID person();

    @Override
    default Optional<UUID> subject() {
        return Optional.of(person());
    }

    /**
     * Cleared for a scope until the end of a day.
     *
     * @param evidence the events it rests on
     * @param sdsRevision the revision that was in force
     * @param pool the version of the pool of items that was current
     * @param policy the version of the policy that was in force
     * @param supervised whether the person was under 18
     * @param countersigner the outside countersigner of a single-instructor decision; else null
     * @param renews the grant before it in the same scope; null for the first
     */
    record Granted(
            UUID person,
            UUID scope,
            UUID decider,
            Set<UUID> evidence,
            LocalDate validThrough,
            UUID sdsRevision,
            String pool,
            String policy,
            boolean supervised,
            Note countersigner,
            UUID renews)
            implements Decision {
        public Granted {
            evidence = Set.copyOf(evidence);
        }
    }

    /** Somebody asked for a clearance and the rule said no. */
    record GrantRefused(UUID person, UUID scope, UUID decider, List<Need> unmet) implements Decision {
        public GrantRefused {
            unmet = List.copyOf(unmet);
        }
    }

    /**
     * Suspended at once.
     *
     * @param scope null for everything
     */
    record Suspended(UUID person, UUID scope, UUID by, Trigger trigger, Note reason) implements Decision {}

    /** A suspension in a scope was lifted after a new practical. */
    record Reinstated(
            UUID person, UUID scope, UUID decider, Set<UUID> evidence, String policy, Note countersigner, Note reason)
            implements Decision {
        public Reinstated {
            evidence = Set.copyOf(evidence);
        }
    }

    /**
     * Taken away for good; only a new grant gives it back.
     *
     * @param scope null for everything
     */
    record Withdrawn(UUID person, UUID scope, UUID by, boolean forCause, Note reason) implements Decision {}

    /** The learner does not agree with a decision. */
    record AppealLodged(UUID person, UUID against, Note reason) implements Decision {}

    /** An appeal was decided; what follows from it is a decision of its own. */
    record AppealDecided(UUID person, UUID appeal, UUID decider, boolean upheld, Note reason) implements Decision {}
}
