package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** How the register itself is kept. */
public sealed interface Keeping extends Body {
    /**
     * An earlier event was wrong. It takes two, and neither is the one whom the event is about.
     *
     * @param event the event that was wrong
     * @param effective when it really happened; null when it did not happen
     * @param replacement what really happened; null when nothing did
     */
    record Corrected(UUID event, UUID by, UUID confirmedBy, Instant effective, Body replacement, Note reason)
            implements Keeping {}

    /**
     * Somebody says that an earlier event was wrong, and waits for another person to confirm it. Changes no answer.
     *
     * @param person whom the earlier event is about; null when it concerns nobody alone
     * @param effective when it really happened; null when it did not happen
     * @param replacement what really happened; null when nothing did
     */
    record CorrectionAsked(UUID person, UUID event, UUID by, Instant effective, Body replacement, Note reason)
            implements Keeping {
        @Override
        public Optional<UUID> subject() {
            return Optional.ofNullable(person);
        }
    }

    /** A correction that was asked for is not made. Changes no answer. */
    record CorrectionDeclined(UUID person, UUID asked, UUID by, Note reason) implements Keeping {
        @Override
        public Optional<UUID> subject() {
            return Optional.ofNullable(person);
        }
    }

    /** The person has left the school. */
    record RelationEnded(UUID person, LocalDate on) implements Keeping {
        @Override
        public Optional<UUID> subject() {
            return Optional.of(person);
        }
    }

    /** Nothing of this person may be purged, or may be again. */
    record LegalHold(UUID person, boolean on, UUID by, Note reason) implements Keeping {
        @Override
        public Optional<UUID> subject() {
            return Optional.of(person);
        }
    }

    /** Names and free texts of this person were erased. */
    record Anonymised(UUID person, int notes) implements Keeping {
        @Override
        public Optional<UUID> subject() {
            return Optional.of(person);
        }
    }

    /**
     * What old events said was erased; their places and hashes stay.
     *
     * @param digest SHA-256 over the erased events' own hashes, in order
     */
    record Purged(int count, Set<Long> numbers, String digest) implements Keeping {
        public Purged {
            numbers = Set.copyOf(numbers);
        }
    }
}
