package org.riseandgel.practice;

import java.util.Set;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.NumericTemplate;

/**
 * Which exercises are about the gelling salt, so that a power of ten could hurt somebody. One rule: the skill teaches
 * handling, dosing or exposure; or a calculation of the exercise doses the salt or counts what it sets free; or the
 * exercise asks for a mass of gelling agent.
 */
final class SaltItems {
    static final Set<String> SKILLS = Set.of("safe-handling", "exposure-arithmetic", "gelling-dose");
    static final Set<String> CALCULATIONS =
            Set.of("dispersion-dose", "fluoride-content", "acid-set-free", "room-air", "shift-exposure");
    static final String RESULT = "gellingAgent";

    private SaltItems() {}

    static boolean contains(ExerciseTemplate template) {
        return SKILLS.contains(template.skill())
                || template instanceof NumericTemplate numeric && (dosesOrCounts(numeric) || asksForAgent(numeric));
    }

    private static boolean dosesOrCounts(NumericTemplate template) {
        return template.works().stream()
                .anyMatch(work -> CALCULATIONS.contains(work.calculation().id()));
    }

    private static boolean asksForAgent(NumericTemplate template) {
        return template.parts().stream().anyMatch(part -> part.of().name().startsWith(RESULT));
    }
}
