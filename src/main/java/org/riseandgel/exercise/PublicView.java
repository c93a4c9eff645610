package org.riseandgel.exercise;

import java.util.List;
import org.riseandgel.core.quantity.DecimalMark;

/**
 * All of a draw that a page may show before the current part is answered. Neither the right answer nor the seed, the
 * slips, the later questions or anything from which they could be worked back is in it.
 *
 * @param part number of the current part, counted from 0
 * @param parts how many parts there are
 * @param prompt the question of the current part
 * @param tolerance how close an answer must come, in words that do not depend on the right one
 * @param wanted what kind of answer is wanted: "a length with its unit, such as 12 mm"
 * @param needsUnit whether a unit must be written
 * @param givenSteps steps that are shown complete
 * @param earlier what was said about the parts already answered
 * @param hints the hints shown so far
 * @param hintsLeft how many more there are
 * @param choice what there is to choose from; null where a number is asked
 */
public record PublicView(
        String title,
        String skill,
        int level,
        boolean critical,
        String story,
        int part,
        int parts,
        String prompt,
        String tolerance,
        String toleranceReason,
        String wanted,
        boolean needsUnit,
        List<WorkingLine> givenSteps,
        List<FeedbackView> earlier,
        List<String> hints,
        int hintsLeft,
        ChoiceView choice) {
    public PublicView {
        givenSteps = List.copyOf(givenSteps);
        earlier = List.copyOf(earlier);
        hints = List.copyOf(hints);
    }

    /** The view of a part, counted from 0, whose earlier parts are answered, with the first few hints shown. */
    public static PublicView of(
            DrawnExercise drawn, int part, DecimalMark mark, List<FeedbackView> earlier, int hintsShown) {
        if (earlier.size() != part) {
            throw new IllegalArgumentException(
                    "part %d follows %d answered parts, but %d are answered".formatted(part, part, earlier.size()));
        }
        ExerciseTemplate template = drawn.template();
        Wanted wanted = drawn instanceof DrawnNumbers numbers
                ? wanted(numbers, part, mark)
                : new Wanted("", "", "", false, List.of(), ((DrawnChoice) drawn).view());
        List<String> hints = drawn.hints(mark);
        int shown = Math.min(Math.max(0, hintsShown), hints.size());
        return new PublicView(
                template.title(),
                template.skill(),
                template.level(),
                template.critical(),
                drawn.story(mark),
                part,
                drawn.partCount(),
                drawn.prompt(part, mark),
                wanted.tolerance,
                wanted.because,
                wanted.words,
                wanted.needsUnit,
                wanted.givenSteps,
                earlier,
                hints.subList(0, shown),
                hints.size() - shown,
                wanted.choice);
    }

    /** What differs from kind to kind. */
    private record Wanted(
            String tolerance,
            String because,
            String words,
            boolean needsUnit,
            List<WorkingLine> givenSteps,
            ChoiceView choice) {}

    private static Wanted wanted(DrawnNumbers drawn, int part, DecimalMark mark) {
        NumericTemplate.Part asked = drawn.part(part).part();
        return new Wanted(
                asked.tolerance().words(asked.unit(), mark),
                asked.tolerance().because(),
                Asking.wanted(asked.unit()),
                Asking.needsUnit(asked.unit()),
                givenSteps(drawn, mark),
                null);
    }

    private static List<WorkingLine> givenSteps(DrawnNumbers drawn, DecimalMark mark) {
        return Working.lines(
                drawn.template().givenSteps().stream()
                        .map(ref -> Working.step(drawn, ref).orElseThrow())
                        .toList(),
                mark);
    }
}
