package org.riseandgel.grading;

import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

    /** When the set closes for a person: with the latest of their extensions, where they have any. */
    static Instant closes(GradedSet set, List<SetStore.Extension> extensions, UUID person) {
        return extensions.stream()
                .filter(extension -> extension.person().equals(person))
                .reduce((earlier, later) -> later)
                .map(SetStore.Extension::closesAt)
                .orElse(set.closesAt());
    }

    /**
     * When it has closed for everybody. What was told is not taken back: an extension that was given after that moment
     * does not move it.
     */
    static Instant closesForAll(GradedSet set, List<SetStore.Extension> extensions) {
        Map<UUID, Instant> longer = new HashMap<>();
        Instant all = set.closesAt();
        for (SetStore.Extension extension : extensions) {
            if (extension.givenAt().isBefore(all)) {
                longer.put(extension.person(), extension.closesAt());
                all = longer.values().stream()
                        .max(Comparator.naturalOrder())
                        .filter(latest -> latest.isAfter(set.closesAt()))
                        .orElse(set.closesAt());
            }
        }
        return all;
    }

    /** When results that wait are told to a person: when it has closed for everybody, and for them. */
    static Instant toldAt(GradedSet set, List<SetStore.Extension> extensions, UUID person) {
        Instant all = closesForAll(set, extensions);
        Instant own = closes(set, extensions, person);
        return own.isAfter(all) ? own : all;
    }

    /** How many tries a person has: those of the set, and one for each extension that came with fresh numbers. */
    static int tries(GradedSet set, List<SetStore.Extension> extensions, UUID person) {
        return set.tries()
                + (int) extensions.stream()
                        .filter(extension -> extension.person().equals(person) && extension.freshTry())
                        .count();
    }

    /** Whether a person has been told right answers of a try that they left open, because the set closed for them. */
    static boolean knowsAnswers(GradedSet set, List<SetStore.Extension> extensions, UUID person, Instant now) {
        return !now.isBefore(closes(set, extensions, person)) && tells(set, extensions, person, now);
    }

    /** A moment that is the closing itself is too late. */
    static boolean isOpen(GradedSet set, Instant closes, Instant now) {
        return set.isPublished() && !now.isBefore(set.opensAt()) && now.isBefore(closes);
    }

    /** Whether a person is told results at this moment. */
    static boolean tells(GradedSet set, List<SetStore.Extension> extensions, UUID person, Instant now) {
        return set.feedback() == Policy.EACH
                || (set.publishedAt() != null && !now.isBefore(toldAt(set, extensions, person)));
    }

    /** What somebody can do with a set that closes for them then and that they may work so often. */
    static Answer answer(GradedSet set, Instant closes, int most, List<Work> tries, boolean learnsHere, Instant now) {
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
        if (tries.size() >= most) {
            return new Answer.UsedUp();
        }
        return learnsHere ? new Answer.Begin(tries.size() + 1) : new Answer.Elsewhere();
    }
}
