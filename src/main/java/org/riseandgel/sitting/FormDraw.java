package org.riseandgel.sitting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.riseandgel.course.Check;
import org.riseandgel.exercise.Shuffle;
import org.riseandgel.exercise.SplitMix;

/**
 * Chooses which exercises make up a sitting, from a seed and from what the person was asked in earlier sittings.
 *
 * <p>Every sitting of a check is comparable with every other: each share gives its number of items, as many of them
 * critical as in any other sitting, and the levels are mixed as in the pool as nearly as may be. No exercise comes
 * twice. Exercises that the person was asked least often come first, so two sittings have in common only what the pool
 * forces on them. The same seed, pool and past give the same items in the same order.
 */
final class FormDraw {
    private final Map<String, Integer> asked;
    private final SplitMix chance;

    private FormDraw(Map<String, Integer> asked, long seed) {
        this.asked = asked;
        this.chance = new SplitMix(seed);
    }

    /** An exercise that may be drawn. */
    record Candidate(String id, int level, boolean critical) {}

    /** A share of a check with the exercises it draws from. */
    record Pool(Check.Share share, List<Candidate> candidates) {
        Pool {
            candidates = candidates.stream()
                    .sorted(Comparator.comparing(Candidate::id))
                    .toList();
        }

        private List<Candidate> those(boolean critical) {
            return candidates.stream()
                    .filter(candidate -> candidate.critical == critical)
                    .toList();
        }
    }

    /**
     * The items of a sitting in the order in which they are asked.
     *
     * @param asked how often the person was asked each exercise in earlier sittings of the check
     */
    static List<Candidate> draw(List<Pool> pools, Map<String, Integer> asked, long seed) {
        FormDraw draw = new FormDraw(asked, seed);
        List<Candidate> items = new ArrayList<>();
        for (Pool pool : pools) {
            int critical = criticalItems(pool);
            // What does not go into the levels evenly goes to levels by chance, of critical and other items to opposite
            // ones.
            List<Integer> levels = Shuffle.of(List.of(1, 2, 3), draw.chance);
            draw.pick(pool.those(true), critical, levels, items);
            Collections.reverse(levels);
            draw.pick(pool.those(false), pool.share.count() - critical, levels, items);
        }
        return Shuffle.of(items, draw.chance);
    }

    /**
     * How many critical items the share gives in every sitting: at least what the check asks for, and among those numbers
     * the one with which two sittings have least in common; of several, the one nearest to the pool's own mixture.
     */
    static int criticalItems(Pool pool) {
        int count = pool.share.count();
        int critical = pool.those(true).size();
        int others = pool.those(false).size();
        int fewest = Math.max(pool.share.criticalAtLeast(), count - others);
        int most = Math.min(critical, count);
        int best = most;
        for (int number = most - 1; number >= fewest; number--) {
            if (cost(number, count, critical, others) < cost(best, count, critical, others)) {
                best = number;
            }
        }
        return best;
    }

    private static long cost(int number, int count, int critical, int others) {
        int inCommon = Math.max(0, 2 * number - critical) + Math.max(0, 2 * (count - number) - others);
        long fromMixture = Math.abs((long) number * (critical + others) - (long) count * critical);
        return (long) inCommon * 1_000_000 + fromMixture;
    }

    private void pick(List<Candidate> from, int count, List<Integer> order, List<Candidate> items) {
        Map<Integer, Integer> levels = levels(from, count, order);
        Map<Integer, List<Candidate>> byTimes = from.stream()
                .collect(Collectors.groupingBy(
                        candidate -> asked.getOrDefault(candidate.id, 0), TreeMap::new, Collectors.toList()));
        int left = count;
        for (List<Candidate> sameTimes : byTimes.values()) {
            List<Candidate> taken = byLevel(Shuffle.of(sameTimes, chance), levels).stream()
                    .limit(left)
                    .toList();
            items.addAll(taken);
            left -= taken.size();
        }
    }

    /**
     * How many of each level, in the proportion of what there is; what is left over goes to the largest remainders, of
     * equal ones to the level that stands first in the order.
     */
    private static Map<Integer, Integer> levels(List<Candidate> from, int count, List<Integer> order) {
        Map<Integer, Long> sizes =
                from.stream().collect(Collectors.groupingBy(Candidate::level, TreeMap::new, Collectors.counting()));
        Map<Integer, Integer> quotas = new TreeMap<>();
        sizes.forEach((level, size) -> quotas.put(level, (int) (count * size / from.size())));
        int left = count - quotas.values().stream().mapToInt(Integer::intValue).sum();
        order.stream()
                .filter(sizes::containsKey)
                .sorted(Comparator.comparing((Integer level) -> count * sizes.get(level) % from.size())
                        .reversed())
                .limit(left)
                .forEach(level -> quotas.merge(level, 1, Integer::sum));
        return quotas;
    }

    /** Those whose level is still wanted first; the quotas are used up on the way. */
    private static List<Candidate> byLevel(List<Candidate> candidates, Map<Integer, Integer> quotas) {
        List<Candidate> wanted = new ArrayList<>();
        List<Candidate> others = new ArrayList<>();
        for (Candidate candidate : candidates) {
            if (quotas.getOrDefault(candidate.level, 0) > 0) {
                quotas.merge(candidate.level, -1, Integer::sum);
                wanted.add(candidate);
            } else {
                others.add(candidate);
            }
        }
        wanted.addAll(others);
        return wanted;
    }
}
