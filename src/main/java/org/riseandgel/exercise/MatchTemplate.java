package org.riseandgel.exercise;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A right side to be found for each left side.
 *
 * @param others right sides that belong to nothing
 * @param shown how many pairs a draw shows
 */
public record MatchTemplate(Head head, List<Pair> pairs, List<String> others, int shown) implements ChoiceTemplate {
    public MatchTemplate {
        pairs = List.copyOf(pairs);
        others = List.copyOf(others);
    }

    /**
     * What belongs together.
     *
     * @param left the left side in words
     * @param figure the drawing of the left side, if it has one
     * @param why why they belong together
     */
    public record Pair(String left, Optional<Picture> figure, String right, String why) {}

    @Override
    public ExerciseKind kind() {
        return ExerciseKind.MATCH;
    }

    @Override
    public DrawnChoice drawn(long seed) {
        SplitMix chance = new SplitMix(seed);
        List<Pair> lefts = Shuffle.of(pairs, chance).stream().limit(shown).toList();
        List<String> rights = Stream.concat(lefts.stream().map(Pair::right), others.stream())
                .distinct()
                .toList();
        return new DrawnMatch(this, seed, lefts, Shuffle.of(rights, chance));
    }

    @Override
    public String toString() {
        return head.toString();
    }
}
