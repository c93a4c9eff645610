package org.riseandgel.grading;

import java.util.List;
import org.riseandgel.exercise.ExerciseLibrary;
import org.riseandgel.exercise.ExerciseTemplate;

/**
 * Which exercises a line gives or may draw from. A rule draws no wrong working, whose numbers are the same for everybody;
 * a line may give one as such.
 */
final class Pools {
    private Pools() {}

    /** The exercises of a line; a rule never draws what other lines give as such. */
    static List<ExerciseTemplate> candidates(Line line, List<Line> all, ExerciseLibrary exercises) {
        if (!line.isRule()) {
            return exercises.find(line.exercise()).stream().toList();
        }
        List<ExerciseTemplate> ofSkill =
                line.level() == 0 ? exercises.ofSkill(line.skill()) : exercises.ofSkill(line.skill(), line.level());
        return ofSkill.stream()
                .filter(one -> !one.showsWrongWorking())
                .filter(one -> all.stream().noneMatch(other -> one.id().equals(other.exercise())))
                .toList();
    }

    static String tooFew(int there) {
        return switch (there) {
            case 0 -> "There is no such exercise that the set does not give already.";
            case 1 -> "There is only 1 such exercise besides those that the set gives already.";
            default -> "There are only %d such exercises besides those that the set gives already.".formatted(there);
        };
    }
}
