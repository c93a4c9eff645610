package org.riseandgel.exercise;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Steps to be put in their order.
 *
 * @param steps in the right order
 * @param shown how many of them a draw shows
 */
public record OrderTemplate(Head head, List<Step> steps, int shown) implements ChoiceTemplate {
    public OrderTemplate {
        steps = List.copyOf(steps);
    }

    /**
     * One step.
     *
     * @param why why it comes there
     * @param place steps of the same place may be swapped; a lower place comes before a higher one
     */
    public record Step(String text, String why, int place) {}

    @Override
    public ExerciseKind kind() {
        return ExerciseKind.PUT_IN_ORDER;
    }

    @Override
    public DrawnChoice drawn(long seed) {
        SplitMix chance = new SplitMix(seed);
        List<Integer> all = IntStream.range(0, steps.size()).boxed().toList();
        List<Step> right = Shuffle.of(all, chance).stream()
                .limit(shown)
                .sorted(Comparator.naturalOrder())
                .map(steps::get)
                .toList();
        return new DrawnOrder(this, seed, right, Shuffle.of(right, chance));
    }

    @Override
    public String toString() {
        return head.toString();
    }
}
