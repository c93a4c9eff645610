package org.riseandgel.grading;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Whether somebody may work a set now, and when its results are told. Pure functions of what is stored and the time. */
final class TryRule {
    private TryRule() {}

    /** What somebody can do with a set now. */
    sealed interface Answer {
        /** It was taken back. */
        record Withdrawn() implements Answer {}

        /** It opens later. */
        record NotYet() implements Answer {}

        /** There is an open try to go on with. */
        record GoOn(UUID work) implements Answer {}

        /** The first or another try can be begun. */
        record Begin(int nth) implements Answer {}

        /** All tries are handed in. */
        record UsedUp() implements Answer {}

        /** It has closed. */
        record Closed() implements Answer {}

        /** The person does not learn in its cohort any more and has no open try. */
        record Elsewhere() implements Answer {}
    }

    /** When the set closes for a person: with their extension, where they have one. */
    static Instant closes(GradedSet set, List<SetStore.Extension> extensions, UUID person) {
        return extensions.stream()
                .filter(extension -> extension.person().equals(person))
                .map(SetStore.Extension::closesAt)
                .findFirst()
                .orElse(set.closesAt());
    }

    /** When it has closed for everybody. */
    static Instant closesForAll(GradedSet set, List<SetStore.Extension> extensions) {
        return extensions.stream()
                .map(SetStore.Extension::closesAt)
                .max(Comparator.naturalOrder())
                .filter(latest -> latest.isAfter(set.closesAt()))
                .orElse(set.closesAt());
    }

    /** A moment that is the closing itself is too late. */
    static boolean isOpen(GradedSet set, Instant closes, Instant now) {
        return set.isPublished() && !now.isBefore(set.opensAt()) && now.isBefore(closes);
    }

    /** Whether results are told at this moment. */
    static boolean tells(GradedSet set, List<SetStore.Extension> extensions, Instant now) {
        return set.feedback() == Policy.EACH
                || (set.publishedAt() != null && !now.isBefore(closesForAll(set, extensions)));
    }

    static Answer answer(GradedSet set, Instant closes, List<Work> tries, boolean learnsHere, Instant now) {
        if (!set.isPublished()) {
            return new Answer.Withdrawn();
        }
        if (now.isBefore(set.opensAt())) {
            return new Answer.NotYet();
        }
        if (!isOpen(set, closes, now)) {
            return new Answer.Closed();
        }
        Optional<Work> open = tries.stream().filter(Work::isOpen).findFirst();
        if (open.isPresent()) {
            return new Answer.GoOn(open.get().id());
        }
        if (tries.size() >= set.tries()) {
            return new Answer.UsedUp();
        }
        return learnsHere ? new Answer.Begin(tries.size() + 1) : new Answer.Elsewhere();
    }
}
