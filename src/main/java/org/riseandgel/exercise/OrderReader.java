package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.riseandgel.exercise.OrderTemplate.Step;

/** Reads what exercises have in which steps are put in order. */
final class OrderReader {
    private static final int FEWEST = 4;
    private static final int FEWEST_SHOWN = 3;
    private static final int MOST = 10;

    private final List<Fields> groups;
    private final int[] places;

    private OrderReader(List<Fields> groups) {
        this.groups = groups;
        this.places = IntStream.range(0, groups.size()).toArray();
    }

    static Optional<ExerciseTemplate> read(ExerciseTemplate.Head head, Fields root) {
        ChoiceFields.noBraces(root);
        List<Fields> groups = ChoiceFields.groups(root, "steps", FEWEST, MOST);
        List<Step> steps = new OrderReader(groups).steps();
        ChoiceFields.twins(steps, groups, "text", Step::text);
        int shown = ChoiceFields.shown(root, FEWEST_SHOWN, steps.size());
        if (!steps.isEmpty() && steps.stream().map(Step::place).distinct().count() == 1) {
            root.find("steps")
                    .orElseThrow()
                    .problem("Ties all steps together, so that any order would be right; take a “with” out.");
        }
        return Optional.of(new OrderTemplate(head, steps, shown));
    }

    private List<Step> steps() {
        for (int i = 0; i < groups.size(); i++) {
            tie(i);
        }
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            Fields group = groups.get(i).only("text", "why", "with");
            steps.add(new Step(
                    ChoiceFields.text(group, "text", ChoiceFields.LONGEST_TEXT),
                    ChoiceFields.text(group, "why", HeadReader.LONGEST_LINE),
                    places[i]));
        }
        return steps;
    }

    /** Two steps that may be swapped take the place of the earlier one, and so do those tied to them before. */
    private void tie(int step) {
        groups.get(step).find("with").ifPresent(field -> field.whole(1, groups.size())
                .ifPresent(number -> {
                    int other = number - 1;
                    int first = Math.min(places[step], places[other]);
                    int last = Math.max(step, other);
                    if (other == step) {
                        field.problem("Ties the step to itself; name another step.");
                    } else if (isApart(Math.min(step, other), last)) {
                        field.problem(
                                "Ties steps that others stand between; tie neighbours, or tie those between too.");
                    } else {
                        int joined = places[last];
                        for (int i = 0; i < places.length; i++) {
                            places[i] = places[i] == joined || places[i] == places[Math.min(step, other)]
                                    ? first
                                    : places[i];
                        }
                    }
                }));
    }

    /** Whether a step stands between two that belongs to neither, as far as the ties read so far tell. */
    private boolean isApart(int from, int to) {
        return IntStream.range(from + 1, to).anyMatch(i -> places[i] != places[from] && places[i] != places[to]);
    }
}
