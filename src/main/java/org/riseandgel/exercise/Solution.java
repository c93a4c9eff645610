package org.riseandgel.exercise;

import java.util.List;
import org.riseandgel.bench.Outcome;
import org.riseandgel.core.quantity.DecimalMark;

/**
 * A part of a draw solved for somebody who need not answer it: a worked example. It says everything, so it is for draws
 * that nobody is asked.
 *
 * @param prompt the question with its numbers
 * @param expected the right answer; a value with its unit, as the instrument would show it
 * @param working the solved steps; empty for a choice
 * @param notes what is to be said of each thing that could be chosen; empty where a number is asked
 */
public record Solution(String prompt, String expected, List<WorkingLine> working, List<ChoiceNote> notes) {
    public Solution {
        working = List.copyOf(working);
        notes = List.copyOf(notes);
    }

    /** The solution of a part, counted from 0. */
    public static Solution of(DrawnExercise drawn, int part, DecimalMark mark) {
        if (drawn instanceof DrawnChoice choice) {
            String right = choice.right();
            return new Solution(choice.prompt(part, mark), choice.words(right), List.of(), choice.notes(right));
        }
        DrawnNumbers numbers = (DrawnNumbers) drawn;
        DrawnPart asked = numbers.part(part);
        return new Solution(
                numbers.prompt(part, mark),
                Feedback.rounded(
                        asked.expected(),
                        asked.part().readability(),
                        asked.part().unit(),
                        mark),
                Working.lines(Working.upTo(numbers, asked.part().of()), mark),
                List.of());
    }

    /** The plan of a part: what to find in which order, without a formula or a number; empty for a choice. */
    public static List<String> plan(DrawnExercise drawn, int part) {
        return drawn instanceof DrawnNumbers numbers
                ? Working.upTo(numbers, numbers.part(part).part().of()).stream()
                        .map(Outcome.Step::label)
                        .distinct()
                        .toList()
                : List.of();
    }
}
