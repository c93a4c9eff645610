package org.riseandgel.course;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.riseandgel.exercise.ExerciseLibrary;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.NumericTemplate;

/**
 * A check that people sit: what it is about, how its items are drawn, and what passes.
 *
 * @param about what it is, in a sentence or two
 * @param shares how many items are drawn from where; no two shares draw from the same exercises
 * @param talkAfterFailed after so many failed sittings in a row an instructor talks with the person before the next
 * @param purpose what it serves besides the learning: "clearance" or "recall", or empty
 * @param recallDays of a recall check: about how many days after a clearance it comes, in rising order; otherwise empty
 */
public record Check(
        String id,
        String title,
        String about,
        List<Share> shares,
        Pass pass,
        int talkAfterFailed,
        String purpose,
        List<Integer> recallDays) {
    /** A passed sitting is part of the evidence for a clearance. */
    public static final String CLEARANCE = "clearance";

    /** It comes unannounced to who is cleared. */
    public static final String RECALL = "recall";

    public Check {
        shares = List.copyOf(shares);
        recallDays = List.copyOf(recallDays);
    }

    /** Whether it comes unannounced, and can be sat only then. */
    public boolean isRecall() {
        return purpose.equals(RECALL);
    }

    /** How many items a sitting has. */
    public int items() {
        return pass.of;
    }

    /**
     * A part of a check: so many items from the exercises of one skill.
     *
     * @param levels the levels to draw from
     * @param criticalAtLeast how many of the items are critical at the least
     */
    public record Share(String skill, Set<Integer> levels, int count, int criticalAtLeast) {
        public Share {
            levels = Set.copyOf(new TreeSet<>(levels));
        }

        /**
         * The exercises that may be drawn: those of the skill and its levels that ask one thing. A wrong working is for
         * learning; its numbers are always the same, and one guess in four finds the slip.
         */
        public List<ExerciseTemplate> pool(ExerciseLibrary library) {
            return library.ofSkill(skill).stream()
                    .filter(template -> levels.contains(template.level()) && asksOneThing(template))
                    .filter(template -> !template.showsWrongWorking())
                    .toList();
        }

        /** What follows the first part of an exercise is asked after its working was shown, which a check does not do. */
        private static boolean asksOneThing(ExerciseTemplate template) {
            return !(template instanceof NumericTemplate numeric)
                    || numeric.parts().size() == 1 && numeric.givenSteps().isEmpty();
        }
    }

    /**
     * What passes.
     *
     * @param right how many items are right at the least
     * @param of of how many
     * @param criticalWrong how many critical items may be wrong, or left open, at the most
     */
    public record Pass(int right, int of, int criticalWrong) {
        /** Whether so many right items, with so many critical ones wrong, pass. */
        public boolean passes(int rightItems, int criticalOnesWrong) {
            return rightItems >= right && criticalOnesWrong <= criticalWrong;
        }
    }
}
