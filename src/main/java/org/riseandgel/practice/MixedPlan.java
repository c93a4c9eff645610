package org.riseandgel.practice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Lays out the items of a mixed session; a pure rule of the candidates and a seed.
 *
 * <p>First come the exercises that somebody was sure of and wrong in, then the rest mixed: what is due, as often as a day
 * of return wants it, and enough others to make a session. At least a third of the items are from older skills, where there
 * are any; older is a skill that was begun on an earlier day than the newest one. Two neighbours are of two skills whenever
 * the skills allow it, so that the way of working has to be found anew each time.
 */
final class MixedPlan {
    static final int FEWEST = 6;
    static final int MOST = 12;
    private static final int OLDER_SHARE = 3;

    private final List<Candidate> candidates;
    private final SplittableRandom chance;
    private final List<Item> items = new ArrayList<>();

    private MixedPlan(List<Candidate> candidates, long seed) {
        this.candidates = candidates;
        this.chance = new SplittableRandom(seed);
    }

    /**
     * A skill that may come up.
     *
     * @param firstDay when it was begun, before today
     * @param overdue days since it was due; negative when it is not due
     * @param needed how many right draws its return wants
     */
    record Candidate(String skill, LocalDate firstDay, long overdue, int needed) {
        boolean isDue() {
            return overdue >= 0;
        }
    }

    /**
     * One item to come.
     *
     * @param exercise the exercise, where it must be this one; null where any of the skill will do
     */
    record Item(String skill, String exercise) {}

    /** The items in order; empty when there is no candidate and nothing to look at again. */
    static List<Item> of(List<Candidate> candidates, List<Item> sureAndWrong, long seed) {
        return new MixedPlan(candidates, seed).items(sureAndWrong);
    }

    private List<Item> items(List<Item> sureAndWrong) {
        sureAndWrong.stream().limit(MOST).forEach(items::add);
        if (!candidates.isEmpty()) {
            Map<Candidate, Integer> counts = counts();
            while (!counts.isEmpty()) {
                Candidate next = next(counts);
                items.add(new Item(next.skill, null));
                counts.computeIfPresent(next, (skill, left) -> left == 1 ? null : left - 1);
            }
        }
        return List.copyOf(items);
    }

    /** How often each skill comes up among the items that are left to choose. */
    private Map<Candidate, Integer> counts() {
        int room = MOST - items.size();
        Map<Candidate, Integer> counts = new LinkedHashMap<>();
        candidates.stream()
                .filter(Candidate::isDue)
                .sorted(Comparator.comparingLong(Candidate::overdue).reversed())
                .forEach(due -> add(counts, due, Math.min(due.needed, room - sum(counts))));
        while (sum(counts) < Math.min(room, FEWEST)) {
            add(counts, filler(counts), 1);
        }
        makeRoomForOlder(counts);
        return counts;
    }

    /** The skill that came up least so far, chance deciding between equals. */
    private Candidate filler(Map<Candidate, Integer> counts) {
        return least(candidates, counts);
    }

    private Candidate least(List<Candidate> of, Map<Candidate, Integer> counts) {
        int fewest =
                of.stream().mapToInt(one -> counts.getOrDefault(one, 0)).min().orElseThrow();
        List<Candidate> equals =
                of.stream().filter(one -> counts.getOrDefault(one, 0) == fewest).toList();
        return equals.get(chance.nextInt(equals.size()));
    }

    /** Older skills get their third, by more items while there is room and in place of newer ones after that. */
    private void makeRoomForOlder(Map<Candidate, Integer> counts) {
        List<Candidate> older = candidates.stream().filter(this::isOlder).toList();
        while (!older.isEmpty() && OLDER_SHARE * olderIn(counts) < items.size() + sum(counts)) {
            if (items.size() + sum(counts) >= MOST) {
                Candidate most = counts.keySet().stream()
                        .filter(one -> !isOlder(one))
                        .max(Comparator.comparing(counts::get))
                        .orElse(null);
                if (most == null) {
                    return;
                }
                counts.computeIfPresent(most, (skill, left) -> left == 1 ? null : left - 1);
            }
            add(counts, least(older, counts), 1);
        }
    }

    private boolean isOlder(Candidate candidate) {
        return candidates.stream().anyMatch(other -> other.firstDay.isAfter(candidate.firstDay));
    }

    private int olderIn(Map<Candidate, Integer> counts) {
        return counts.entrySet().stream()
                .filter(count -> isOlder(count.getKey()))
                .mapToInt(Map.Entry::getValue)
                .sum();
    }

    /** Of the skills that are not the last item's, the one with most left to come, chance deciding between equals. */
    private Candidate next(Map<Candidate, Integer> counts) {
        String last = items.isEmpty() ? "" : items.get(items.size() - 1).skill();
        List<Candidate> others =
                counts.keySet().stream().filter(one -> !one.skill.equals(last)).toList();
        List<Candidate> from = others.isEmpty() ? List.copyOf(counts.keySet()) : others;
        int most = from.stream().mapToInt(counts::get).max().orElseThrow();
        List<Candidate> equals =
                from.stream().filter(one -> counts.get(one) == most).toList();
        return equals.get(chance.nextInt(equals.size()));
    }

    private static void add(Map<Candidate, Integer> counts, Candidate candidate, int more) {
        if (more > 0) {
            counts.merge(candidate, more, Integer::sum);
        }
    }

    private static int sum(Map<Candidate, Integer> counts) {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }
}
