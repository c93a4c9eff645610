package org.riseandgel.clearance.rule;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** What the school lays down: scopes, policy, safety data sheets, who may train, observe and decide. */
public sealed interface Setting extends Body {
    /** A scope exists from now on. */
    record ScopeDefined(Scope scope) implements Setting {}

    /** A scope is no longer used; nobody is cleared in it. */
    record ScopeClosed(UUID scope, UUID by, Note reason) implements Setting {}

    /** This policy holds from now on. */
    record PolicyInForce(Policy policy) implements Setting {}

    /**
     * A revision of a supplier's safety data sheet was filed.
     *
     * @param sha256 hash of the file
     * @param sectionsChanged numbers of the sections that differ from the revision before; empty for the first
     * @param deltaDue last day for the delta training of those who are cleared already
     */
    record SdsFiled(
            UUID revision,
            Substance substance,
            String label,
            LocalDate dated,
            String sha256,
            Set<Integer> sectionsChanged,
            LocalDate deltaDue)
            implements Setting {
        private static final Set<Integer> HAZARDS_AND_PROTECTION = Set.of(2, 8);

        public SdsFiled {
            sectionsChanged = Set.copyOf(sectionsChanged);
        }

        /** Whether the hazards (section 2) or the exposure controls and protection (section 8) changed. */
        public boolean changesProtection() {
            return sectionsChanged.stream().anyMatch(HAZARDS_AND_PROTECTION::contains);
        }
    }

    /** Somebody may train, observe or decide until the end of a day. */
    record QualificationGiven(UUID person, Act act, LocalDate through, UUID by, Note basis) implements Setting {
        @Override
        public Optional<UUID> subject() {
            return Optional.of(person);
        }
    }

    /** A qualification ended before its day. */
    record QualificationEnded(UUID person, Act act, boolean forCause, UUID by, Note reason) implements Setting {
        @Override
        public Optional<UUID> subject() {
            return Optional.of(person);
        }
    }

    /**
     * Those who are cleared in a scope need a delta training by the end of a day.
     *
     * @param person the only one who needs it; null for everybody in the scope
     */
    record DeltaAsked(UUID person, UUID scope, DeltaKind kind, LocalDate due, Note what) implements Setting {
        @Override
        public Optional<UUID> subject() {
            return Optional.ofNullable(person);
        }
    }

    /** A changed policy would no longer grant this clearance: it is to be renewed by the end of a day. */
    record RenewalAsked(UUID person, UUID grant, LocalDate due, String policy) implements Setting {
        @Override
        public Optional<UUID> subject() {
            return Optional.of(person);
        }
    }
}
