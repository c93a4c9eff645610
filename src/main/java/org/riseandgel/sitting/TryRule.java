package org.riseandgel.sitting;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * Whether a sitting may be begun now. One try a school day: a sitting counts for the day on which it was begun, whenever
 * it is handed in. A sitting that is open is finished before the next one. After a number of failed sittings in a row a
 * talk with an instructor comes first; a passed sitting and a talk both begin the count anew.
 */
final class TryRule {
    private TryRule() {}

    /**
     * An earlier sitting of the check.
     *
     * @param day the school day on which it was begun
     * @param handedInAt null while it is open
     */
    record Past(UUID id, LocalDate day, Instant handedInAt, boolean passed) {}

    /** What may be done now. */
    sealed interface Answer {
        /** A sitting may be begun. */
        record Begin() implements Answer {}

        /** There is one to go on with. */
        record GoOn(UUID sitting) implements Answer {}

        /** The try of this day was used; the next is possible on the day named. */
        record NotToday(LocalDate next) implements Answer {}

        /** A recall check that does not wait for the person now. */
        record NotCalled() implements Answer {}

        /** An instructor has to note a talk first. */
        record TalkFirst(int failed) implements Answer {}
    }

    /**
     * The answer for a person and a check.
     *
     * @param past all earlier sittings of that person and check, in any order
     * @param lastTalk when the last talk about the check was noted
     */
    static Answer answer(int talkAfterFailed, LocalDate today, List<Past> past, Optional<Instant> lastTalk) {
        Optional<Past> open =
                past.stream().filter(sitting -> sitting.handedInAt == null).findFirst();
        if (open.isPresent()) {
            return new Answer.GoOn(open.get().id);
        }
        int failed = failedInRow(past, lastTalk);
        if (failed >= talkAfterFailed) {
            return new Answer.TalkFirst(failed);
        }
        // A day after today is in it only if the school's clock or zone was set back; it counts as used all the same.
        return past.stream()
                .map(Past::day)
                .max(Comparator.naturalOrder())
                .filter(last -> !last.isBefore(today))
                .<Answer>map(last -> new Answer.NotToday(last.plusDays(1)))
                .orElseGet(Answer.Begin::new);
    }

    /** How many sittings failed since the last one that passed and since the last talk. */
    static int failedInRow(List<Past> past, Optional<Instant> lastTalk) {
        Instant since = past.stream()
                .filter(Past::passed)
                .map(Past::handedInAt)
                .max(Comparator.naturalOrder())
                .filter(pass -> lastTalk.isEmpty() || pass.isAfter(lastTalk.get()))
                .or(() -> lastTalk)
                .orElse(Instant.MIN);
        return (int) past.stream()
                .filter(sitting -> sitting.handedInAt != null && !sitting.passed)
                .filter(sitting -> sitting.handedInAt.isAfter(since))
                .count();
    }
}
