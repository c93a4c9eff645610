package org.riseandgel.sitting;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.riseandgel.exercise.SplitMix;

/**
 * When a recall check comes. Each of its days after a clearance is moved by up to six days to either side, for each
 * person and each clearance in another way that the stored facts decide, so that nobody can know the day before.
 */
final class RecallRule {
    private static final int MOST_DAYS_MOVED = 6;

    private RecallRule() {}

    /**
     * Since when a recall check waits. A sitting that was begun after the last date has answered it, and all before.
     *
     * @param days about how many days after the clearance it comes, in rising order
     * @param begun when earlier sittings of the check were begun
     */
    static Optional<Instant> waitingSince(
            List<Integer> days, UUID person, Instant cleared, Collection<Instant> begun, Instant now) {
        return dates(days, person, cleared).stream()
                .filter(date -> !date.isAfter(now))
                .max(Comparator.naturalOrder())
                .filter(last -> begun.stream().allMatch(sitting -> sitting.isBefore(last)));
    }

    /** The dates on which it comes, in rising order. */
    static List<Instant> dates(List<Integer> days, UUID person, Instant cleared) {
        SplitMix chance = new SplitMix(person.getMostSignificantBits()
                ^ Long.rotateLeft(person.getLeastSignificantBits(), 21)
                ^ cleared.getEpochSecond());
        return IntStream.range(0, days.size())
                .map(i -> days.get(i) + chance.below(2 * MOST_DAYS_MOVED + 1) - MOST_DAYS_MOVED)
                .mapToObj(day -> cleared.plus(Duration.ofDays(day)))
                .toList();
    }
}
