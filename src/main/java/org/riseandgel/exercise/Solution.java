package org.riseandgel.exercise;

import java.util.List;
import org.riseandgel.core.quantity.DecimalMark;

/**
 * A part of a draw solved for somebody who need not answer it: a worked example. It says everything, so it is for draws
 * that nobody is asked.
 *
 * @param prompt the question with its numbers
 * @param expected the right value with its unit, as the instrument would show it
 * @param working the solved steps
 */
public record Solution(String prompt, String expected, List<WorkingLine> working) {
    public Solution {
        working = List.copyOf(working);
    }

    /** The solution of a part, counted from 0. */
    public static Solution of(DrawnExercise drawn, int part, DecimalMark mark) {
        ExerciseTemplate.Part asked = drawn.part(part).part();
        return new Solution(
                drawn.prompt(part, mark),
                Feedback.rounded(drawn.part(part).expected(), asked.readability(), asked.unit(), mark),
                Working.lines(Working.upTo(drawn, asked.of()), mark));
    }

    /** The plan of a part: what to find in which order, without a formula or a number. */
    public static List<String> plan(DrawnExercise drawn, int part) {
        return Working.upTo(drawn, drawn.part(part).part().of()).stream()
                .map(step -> step.label())
                .distinct()
                .toList();
    }
}
