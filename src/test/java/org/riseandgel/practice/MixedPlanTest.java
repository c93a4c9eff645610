package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.riseandgel.practice.MixedPlan.Candidate;
import org.riseandgel.practice.MixedPlan.Item;

/** LX-11: neighbours differ, and at least a third of the items come from older skills. */
class MixedPlanTest {
    private static final LocalDate DAY = LocalDate.parse("2027-03-01");

    private static Candidate candidate(int number, int begun, int overdue, int needed) {
        return new Candidate("skill-" + number, DAY.plusDays(begun), overdue, needed);
    }

    @Test
    void nothingBegunMakesNoSession() {
        assertThat(MixedPlan.of(List.of(), List.of(), 1)).isEmpty();
    }

    @Test
    void whatWasSureAndWrongComesFirst() {
        Item again = new Item("skill-2", "exercise-2");
        List<Item> items = MixedPlan.of(List.of(candidate(1, 0, 0, 1), candidate(2, 3, -1, 1)), List.of(again), 5);
        assertThat(items.get(0)).isEqualTo(again);
        assertThat(items.get(1).skill()).isEqualTo("skill-1");
        assertThat(items).hasSizeGreaterThanOrEqualTo(MixedPlan.FEWEST);
    }

    @Test
    void whatIsDueComesUpAsOftenAsItsReturnWants() {
        List<Candidate> candidates = List.of(candidate(1, 0, 4, 3), candidate(2, 0, -1, 1), candidate(3, 0, -1, 1));
        List<Item> items = MixedPlan.of(candidates, List.of(), 9);
        assertThat(items.stream().filter(item -> item.skill().equals("skill-1")))
                .hasSize(3);
    }

    @Test
    void theSameSeedMakesTheSameSession() {
        List<Candidate> candidates = List.of(candidate(1, 0, 4, 1), candidate(2, 1, -1, 1), candidate(3, 2, 0, 1));
        assertThat(MixedPlan.of(candidates, List.of(), 77)).isEqualTo(MixedPlan.of(candidates, List.of(), 77));
    }

    @Property
    void aSessionKeepsItsRules(@ForAll("candidates") List<Candidate> candidates, @ForAll long seed) {
        List<Item> items = MixedPlan.of(candidates, List.of(), seed);
        if (candidates.isEmpty()) {
            assertThat(items).isEmpty();
            return;
        }
        assertThat(items).hasSizeBetween(MixedPlan.FEWEST, MixedPlan.MOST);
        List<Candidate> older = candidates.stream()
                .filter(one ->
                        candidates.stream().anyMatch(other -> other.firstDay().isAfter(one.firstDay())))
                .toList();
        if (!older.isEmpty()) {
            long fromOlder = items.stream()
                    .filter(item -> older.stream().anyMatch(one -> one.skill().equals(item.skill())))
                    .count();
            assertThat(3 * fromOlder).isGreaterThanOrEqualTo(items.size());
        }
        Map<String, Integer> counts = new LinkedHashMap<>();
        items.forEach(item -> counts.merge(item.skill(), 1, Integer::sum));
        int most = counts.values().stream().max(Comparator.naturalOrder()).orElseThrow();
        if (2 * most <= items.size() + 1) {
            for (int i = 1; i < items.size(); i++) {
                assertThat(items.get(i).skill())
                        .as("item %d of %s", i, items)
                        .isNotEqualTo(items.get(i - 1).skill());
            }
        }
    }

    @Provide
    Arbitrary<List<Candidate>> candidates() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 40),
                        Arbitraries.integers().between(-1, 30),
                        Arbitraries.of(1, 3))
                .as((begun, overdue, needed) -> new int[] {begun, overdue, needed})
                .list()
                .ofMaxSize(14)
                .map(all -> {
                    List<Candidate> candidates = new ArrayList<>();
                    all.forEach(one -> candidates.add(candidate(candidates.size(), one[0], one[1], one[2])));
                    return candidates;
                });
    }
}
