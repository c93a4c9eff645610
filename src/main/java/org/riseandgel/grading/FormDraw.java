package org.riseandgel.grading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.riseandgel.exercise.Shuffle;
import org.riseandgel.exercise.SplitMix;

/**
 * Chooses the exercises of one try and a seed for each, from one seed. The same seed and lines give the same items in the
 * same order: line by line, what a rule draws in an order by chance.
 */
final class FormDraw {
    private FormDraw() {}

    /** An exercise that was chosen, with the seed that its numbers come from. */
    record Chosen(Line line, SetStore.Frozen exercise, long seed) {}

    static List<Chosen> draw(List<Line> lines, List<SetStore.Frozen> pool, long seed) {
        SplitMix chance = new SplitMix(seed);
        List<Chosen> chosen = new ArrayList<>();
        lines.stream().sorted(Comparator.comparing(Line::place)).forEach(line -> {
            List<SetStore.Frozen> ofLine = pool.stream()
                    .filter(one -> one.line().equals(line.id()))
                    .sorted(Comparator.comparing(SetStore.Frozen::exercise))
                    .toList();
            Shuffle.of(ofLine, chance).stream()
                    .limit(line.items())
                    .forEach(one -> chosen.add(new Chosen(line, one, chance.next())));
        });
        return List.copyOf(chosen);
    }
}
