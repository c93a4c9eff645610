package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** What was seen of one person: training, sittings, practicals and papers. It clears nobody by itself. */
public sealed interface Evidence extends Body {
    UUID person();

    @Override
    default Optional<UUID> subject() {
        return Optional.of(person());
    }

    /** Training on a substance. */
    record TrainingGiven(UUID person, UUID trainer, Substance substance, Note topic, Means means, Versions versions)
            implements Evidence {}

    /** Training that was had elsewhere, on a day; own sittings and an own practical are still needed. */
    record EarlierTraining(UUID person, Substance substance, LocalDate on, UUID seenBy, Note where)
            implements Evidence {}

    /** A sitting that was handed in. */
    record SittingNoted(
            UUID person,
            UUID sitting,
            String check,
            Kind kind,
            Instant startedAt,
            Instant handedInAt,
            int items,
            int right,
            int criticalWrong,
            Versions versions)
            implements Evidence {
        /** What a sitting is for. */
        public enum Kind {
            /** Before a clearance. */
            GATE,
            /** Unannounced, while cleared. */
            RECALL
        }
    }

    /** The person has read a revision of the safety data sheet. */
    record SdsRead(UUID person, UUID revision, String sha256) implements Evidence {}

    /** A practical that somebody watched, step by step. The event's time is the end of the practical. */
    record ObservationRecorded(
            UUID person,
            UUID scope,
            UUID observer,
            Instant startedAt,
            Instant endedAt,
            String place,
            Material material,
            int attempt,
            String checklist,
            List<StepSeen> steps,
            Note comment,
            Means means,
            Versions versions)
            implements Evidence {
        /** What was handled. */
        public enum Material {
            STAND_IN,
            SALT
        }

        public ObservationRecorded {
            steps = List.copyOf(steps);
        }
    }

    /** The learner has seen what the observer wrote. */
    record ObservationAcknowledged(UUID person, UUID observation) implements Evidence {}

    /** Protective equipment put on and taken off before an observer. */
    record PpeShown(UUID person, Form form, UUID observer, Set<String> items, Means means, Versions versions)
            implements Evidence {
        public PpeShown {
            items = Set.copyOf(items);
        }
    }

    /** Somebody saw a paper that tells the age; the date is kept elsewhere. */
    record AgeSeen(UUID person, UUID seenBy, String commitment) implements Evidence {}

    /** Somebody under 18 may learn this work under a named supervisor until the end of a day. */
    record AgeException(UUID person, UUID supervisor, LocalDate through, UUID by, Note legalBasis, Note riskAssessment)
            implements Evidence {}

    /** A respirator was tried on this face. */
    record FitTested(UUID person, boolean passed, String respirator, Note tester) implements Evidence {}

    /** Training on the respirator. */
    record RespiratorTrained(UUID person, UUID trainer, Means means) implements Evidence {}

    /** Fit for the task or not; why is nobody's business here. */
    record FitForTask(UUID person, boolean fit, Note by) implements Evidence {}

    /**
     * A delta training was had.
     *
     * @param asked the event that asked for it; null after a long time without handling
     */
    record DeltaDone(UUID person, UUID asked, UUID trainer, Means means) implements Evidence {}

    /** The person did a task of a scope. */
    record Handled(UUID person, UUID scope, Task task) implements Evidence {}
}
