package org.riseandgel.sitting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.riseandgel.course.Check;
import org.riseandgel.sitting.FormDraw.Candidate;
import org.riseandgel.sitting.FormDraw.Pool;

/** Sittings of a check are comparable, hold nothing twice, and have as little in common as the pool allows. */
class FormDrawTest {
    private static final Map<String, Integer> NOTHING = Map.of();

    @Property(tries = 400)
    void eachShareGivesItsItemsAndNothingComesTwice(@ForAll("pools") Pool pool, @ForAll long seed) {
        List<Candidate> items = FormDraw.draw(List.of(pool), NOTHING, seed);
        assertThat(items).hasSize(pool.share().count()).doesNotHaveDuplicates().isSubsetOf(pool.candidates());
        assertThat(critical(items)).isGreaterThanOrEqualTo(pool.share().criticalAtLeast());
    }

    @Property(tries = 400)
    void allSittingsHaveAsManyCriticalItems(@ForAll("pools") Pool pool, @ForAll long one, @ForAll long other) {
        List<Candidate> first = FormDraw.draw(List.of(pool), NOTHING, one);
        List<Candidate> second = FormDraw.draw(List.of(pool), asked(List.of(first)), other);
        assertThat(critical(second)).isEqualTo(critical(first));
    }

    /** The least that two draws of so many critical and so many other items can have in common, whichever was first. */
    @Property(tries = 400)
    void twoSittingsHaveOnlyInCommonWhatThePoolForces(
            @ForAll("pools") Pool pool, @ForAll long one, @ForAll long other) {
        List<Candidate> first = FormDraw.draw(List.of(pool), NOTHING, one);
        List<Candidate> second = FormDraw.draw(List.of(pool), asked(List.of(first)), other);
        Set<Candidate> inCommon = new HashSet<>(first);
        inCommon.retainAll(second);
        assertThat(inCommon).hasSize(least(pool));
    }

    private static int least(Pool pool) {
        int count = pool.share().count();
        int criticalOnes = critical(pool.candidates());
        int others = pool.candidates().size() - criticalOnes;
        int least = Integer.MAX_VALUE;
        for (int critical = pool.share().criticalAtLeast(); critical <= count; critical++) {
            if (critical <= criticalOnes && count - critical <= others) {
                int common = Math.max(0, 2 * critical - criticalOnes) + Math.max(0, 2 * (count - critical) - others);
                least = Math.min(least, common);
            }
        }
        return least;
    }

    @Property(tries = 200)
    void whateverWasAskedBeforeTheNextSittingTakesWhatWasAskedLeast(
            @ForAll("pools") Pool pool, @ForAll("pasts") List<Long> seeds) {
        List<List<Candidate>> past = new ArrayList<>();
        for (long seed : seeds) {
            past.add(FormDraw.draw(List.of(pool), asked(past), seed));
        }
        // Within each sort, no exercise is ever two sittings ahead of another.
        Map<String, Integer> asked = asked(past);
        for (boolean critical : List.of(true, false)) {
            List<Integer> times = pool.candidates().stream()
                    .filter(candidate -> candidate.critical() == critical)
                    .map(candidate -> asked.getOrDefault(candidate.id(), 0))
                    .toList();
            if (!times.isEmpty()) {
                int most = times.stream().mapToInt(Integer::intValue).max().orElseThrow();
                int fewest = times.stream().mapToInt(Integer::intValue).min().orElseThrow();
                assertThat(most - fewest).isLessThanOrEqualTo(1);
            }
        }
    }

    @Property(tries = 200)
    void theSameSeedAndPastGiveTheSameItems(@ForAll("pools") Pool pool, @ForAll long seed) {
        List<Candidate> turned = new ArrayList<>(pool.candidates());
        java.util.Collections.reverse(turned);
        assertThat(FormDraw.draw(List.of(new Pool(pool.share(), turned)), NOTHING, seed))
                .isEqualTo(FormDraw.draw(List.of(pool), NOTHING, seed));
    }

    @Example
    void levelsAreMixedAsInThePool() {
        Pool pool = pool(share(10, 4), 4, 4, 4, 4, 4, 4);
        for (long seed = 0; seed < 200; seed++) {
            Map<Integer, Long> levels = FormDraw.draw(List.of(pool), NOTHING, seed).stream()
                    .collect(Collectors.groupingBy(Candidate::level, Collectors.counting()));
            // Ten of three levels that are equally many: three or four of each.
            assertThat(levels.values()).allMatch(count -> count >= 3 && count <= 4);
        }
    }

    @Example
    void chanceReachesEveryExerciseAndEveryPlace() {
        Pool pool = pool(share(3, 1), 2, 2, 2, 2, 2, 2);
        Set<String> firsts = new HashSet<>();
        for (long seed = 0; seed < 400; seed++) {
            firsts.add(FormDraw.draw(List.of(pool), NOTHING, seed).get(0).id());
        }
        assertThat(firsts).hasSize(12);
    }

    @Example
    void aCheckOfTwelveFromTwentyFourTwiceIsTwentyFourDifferentOnes() {
        Pool handling = pool(share(10, 4), 3, 4, 3, 5, 3, 3);
        Pool arithmetic = new Pool(
                new Check.Share("exposure-arithmetic", Set.of(2), 2, 0),
                List.of(
                        new Candidate("e1", 2, false),
                        new Candidate("e2", 2, false),
                        new Candidate("e3", 2, false),
                        new Candidate("e4", 2, false)));
        List<Pool> pools = List.of(handling, arithmetic);
        List<Candidate> first = FormDraw.draw(pools, NOTHING, 7);
        List<Candidate> second = FormDraw.draw(pools, asked(List.of(first)), 8);
        assertThat(first).hasSize(12);
        assertThat(second).hasSize(12).doesNotContainAnyElementsOf(first);
        assertThat(critical(first)).isEqualTo(critical(second)).isGreaterThanOrEqualTo(4);
    }

    private static int critical(List<Candidate> items) {
        return (int) items.stream().filter(Candidate::critical).count();
    }

    private static Map<String, Integer> asked(List<List<Candidate>> past) {
        Map<String, Integer> asked = new HashMap<>();
        past.forEach(form -> form.forEach(item -> asked.merge(item.id(), 1, Integer::sum)));
        return asked;
    }

    @Provide
    Arbitrary<List<Long>> pasts() {
        return Arbitraries.longs().list().ofMinSize(1).ofMaxSize(6);
    }

    /** Pools of every size and mixture that a check could have. */
    @Provide
    Arbitrary<Pool> pools() {
        Arbitrary<Integer> some = Arbitraries.integers().between(0, 8);
        return Combinators.combine(some, some, some, some, some, some)
                .as((a, b, c, d, e, f) -> new int[] {a, b, c, d, e, f})
                .filter(sizes -> java.util.Arrays.stream(sizes).sum() > 0)
                .flatMap(sizes -> {
                    int all = java.util.Arrays.stream(sizes).sum();
                    int critical = sizes[0] + sizes[1] + sizes[2];
                    return Arbitraries.integers().between(1, all).flatMap(count -> Arbitraries.integers()
                            .between(0, Math.min(count, critical))
                            .map(atLeast -> pool(share(count, atLeast), sizes)));
                });
    }

    private static Check.Share share(int count, int criticalAtLeast) {
        return new Check.Share("safe-handling", Set.of(1, 2, 3), count, criticalAtLeast);
    }

    /** Numbers of critical ones at level 1, 2, 3 and of others at level 1, 2, 3. */
    private static Pool pool(Check.Share share, int... sizes) {
        List<Candidate> candidates = new ArrayList<>();
        for (int sort = 0; sort < 6; sort++) {
            for (int i = 0; i < sizes[sort]; i++) {
                candidates.add(new Candidate("x" + sort + "-" + i, sort % 3 + 1, sort < 3));
            }
        }
        return new Pool(share, candidates);
    }
}
