package org.riseandgel.sitting;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.course.Check;

/**
 * A sitting as it is stored. It carries the rule it was begun under, so that a later change to the check changes nothing
 * for it.
 *
 * @param title the check's title when it was begun
 * @param pool the version of the check, {@link Digests#poolVersion}
 * @param day the school day for which it counts: the one on which it was begun
 * @param result how it was marked; null while it is open
 */
record StoredSitting(
        UUID id,
        UUID person,
        String check,
        String title,
        String pool,
        Check.Pass pass,
        long seed,
        LocalDate day,
        Instant startedAt,
        Result result,
        List<StoredItem> items) {
    StoredSitting {
        items = List.copyOf(items);
    }

    /** How a sitting was marked, when, by which rules, and the digest of what was judged. */
    record Result(
            Instant handedInAt, int right, int criticalWrong, boolean passed, String contentHash, String coreVersion) {}

    boolean isOpen() {
        return result == null;
    }

    TryRule.Past asPast() {
        return new TryRule.Past(id, day, isOpen() ? null : result.handedInAt, !isOpen() && result.passed);
    }

    /** The item of that number. */
    Optional<StoredItem> item(int number) {
        return items.stream().filter(item -> item.number() == number).findFirst();
    }

    /** The same sitting with these items and this result. */
    StoredSitting with(List<StoredItem> newItems, Result newResult) {
        return new StoredSitting(id, person, check, title, pool, pass, seed, day, startedAt, newResult, newItems);
    }

    /** How many items have no answer yet. */
    long leftOpen() {
        return items.stream().filter(item -> !item.isAnswered()).count();
    }

    /** The first item after this number that has no answer yet, beginning again at the front; empty when all have one. */
    Optional<Integer> nextOpen(int number) {
        return items.stream()
                .filter(item -> !item.isAnswered() && item.number() > number)
                .findFirst()
                .or(() -> items.stream().filter(item -> !item.isAnswered()).findFirst())
                .map(StoredItem::number);
    }

    /** Names the sitting only: the seed must not slip into a log. */
    @Override
    public String toString() {
        return "sitting " + id;
    }
}
