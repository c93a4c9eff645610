package org.riseandgel.grading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Which items a try gets. */
class FormDrawTest {
    private static final Line ONE = Line.exercise(UUID.randomUUID(), 1, "a", 3, "");
    private static final Line RULE = Line.rule(UUID.randomUUID(), 2, "weighing", 2, 3, 1);
    private static final List<SetStore.Frozen> POOL = Stream.concat(
                    Stream.of(new SetStore.Frozen(ONE.id(), "a", "v", "weighing")),
                    Stream.of("b", "c", "d", "e", "f").map(id -> new SetStore.Frozen(RULE.id(), id, "v", "weighing")))
            .toList();

    @Property(tries = 100)
    void everyTryHasAllLinesInOrderAndNoExerciseTwice(@ForAll long seed) {
        List<FormDraw.Chosen> items = FormDraw.draw(List.of(RULE, ONE), POOL, seed);
        assertThat(items).hasSize(4);
        assertThat(items.get(0).exercise().exercise()).isEqualTo("a");
        assertThat(items.stream().map(item -> item.exercise().exercise())).doesNotHaveDuplicates();
        assertThat(items.stream().map(FormDraw.Chosen::seed)).doesNotHaveDuplicates();
        assertThat(FormDraw.draw(List.of(RULE, ONE), POOL, seed)).isEqualTo(items);
    }

    @Test
    void differentSeedsDrawDifferently() {
        assertThat(Stream.iterate(1L, seed -> seed + 1)
                        .limit(30)
                        .map(seed -> FormDraw.draw(List.of(RULE), POOL, seed).stream()
                                .map(item -> item.exercise().exercise())
                                .toList())
                        .distinct()
                        .count())
                .isGreaterThan(10);
    }
}
