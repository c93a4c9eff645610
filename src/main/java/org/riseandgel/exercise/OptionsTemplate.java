package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One or several right options among others.
 *
 * @param picture the drawing that is asked about, if there is one
 * @param options in the order of the file
 * @param shown how many of them a draw shows
 */
public record OptionsTemplate(Head head, ExerciseKind kind, Optional<Picture> picture, List<Option> options, int shown)
        implements ChoiceTemplate {
    public OptionsTemplate {
        options = List.copyOf(options);
    }

    /**
     * One option.
     *
     * @param why what is true about it
     * @param slip a short name of the mistake of choosing it; empty when it has none
     */
    public record Option(String text, boolean right, String why, String slip) {}

    /** With one right option, it and others by chance; with several, any that hold at least one of either sort. */
    @Override
    public DrawnChoice drawn(long seed) {
        SplitMix chance = new SplitMix(seed);
        List<Option> order = Shuffle.of(options, chance);
        List<Option> picked = new ArrayList<>();
        pick(order, picked, true);
        if (kind == ExerciseKind.CHOOSE_ALL) {
            pick(order, picked, false);
        }
        for (Option option : order) {
            boolean may = kind == ExerciseKind.CHOOSE_ALL || !option.right();
            if (picked.size() < shown && may && !picked.contains(option)) {
                picked.add(option);
            }
        }
        return new DrawnOptions(this, seed, Shuffle.of(picked, chance));
    }

    private static void pick(List<Option> order, List<Option> picked, boolean right) {
        order.stream().filter(option -> option.right() == right).findFirst().ifPresent(picked::add);
    }

    @Override
    public String toString() {
        return head.toString();
    }
}
