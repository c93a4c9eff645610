package org.riseandgel.sitting;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.riseandgel.course.Check;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.ExerciseLibrary;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.SplitMix;

/** Draws the items of a sitting: which exercises, in which order, and the numbers of each. */
@ApplicationScoped
class Forms {
    private final KeptDraws draws;

    Forms(KeptDraws draws) {
        this.draws = draws;
    }

    /** Items for somebody who was asked these exercises so often before; all of it follows from the seed. */
    List<StoredItem> draw(Check check, ExerciseLibrary library, Map<String, Integer> asked, long seed) {
        SplitMix seeds = new SplitMix(seed);
        List<StoredItem> items = new ArrayList<>();
        for (FormDraw.Candidate candidate : FormDraw.draw(pools(check, library), asked, seeds.next())) {
            ExerciseTemplate template = library.find(candidate.id()).orElseThrow();
            DrawnExercise drawn = draws.fresh(template, seeds.next());
            items.add(StoredItem.fresh(
                    items.size() + 1,
                    template.id(),
                    template.version(),
                    template.skill(),
                    template.critical(),
                    drawn.seed()));
        }
        return items;
    }

    static List<FormDraw.Pool> pools(Check check, ExerciseLibrary library) {
        return check.shares().stream()
                .map(share -> new FormDraw.Pool(
                        share,
                        share.pool(library).stream()
                                .map(template ->
                                        new FormDraw.Candidate(template.id(), template.level(), template.critical()))
                                .toList()))
                .toList();
    }
}
