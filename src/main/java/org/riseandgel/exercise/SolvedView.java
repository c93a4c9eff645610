package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.List;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;

/**
 * A draw with everything in it: answers, slips and working. It is for those who set exercises, and never goes to anybody
 * who is to answer this draw.
 *
 * @param seed the seed that gives just this draw
 * @param picture the drawing that is asked about, or null
 * @param given the steps that are shown complete from the start
 */
public record SolvedView(
        long seed, String story, Picture picture, List<WorkingLine> given, List<SolvedPart> parts, List<String> hints) {
    public SolvedView {
        given = List.copyOf(given);
        parts = List.copyOf(parts);
        hints = List.copyOf(hints);
    }

    /**
     * A question with its answer.
     *
     * @param tolerance how close an answer must come; empty for a choice
     * @param slips the wrong answers that are recognised
     * @param working the solved steps; empty for a choice
     * @param notes what is said of each thing that can be chosen; empty for a number
     */
    public record SolvedPart(
            String prompt,
            String answer,
            String tolerance,
            List<SlipLine> slips,
            List<WorkingLine> working,
            List<ChoiceNote> notes) {
        public SolvedPart {
            slips = List.copyOf(slips);
            working = List.copyOf(working);
            notes = List.copyOf(notes);
        }
    }

    /** A wrong answer that is recognised: the name of the slip, what it gives, and what is said about it. */
    public record SlipLine(String title, String gives, String line) {}

    /** The draw in the school's decimal mark. */
    public static SolvedView of(DrawnExercise drawn, DecimalMark mark) {
        if (drawn instanceof DrawnNumbers numbers) {
            return numbers(numbers, mark);
        }
        DrawnChoice choice = (DrawnChoice) drawn;
        SolvedPart part = new SolvedPart(
                choice.prompt(0, mark),
                choice.words(choice.right()),
                "",
                slips(choice),
                List.of(),
                choice.notes(choice.right()));
        return new SolvedView(
                choice.seed(),
                choice.story(mark),
                choice.view().picture(),
                List.of(),
                List.of(part),
                choice.hints(mark));
    }

    private static SolvedView numbers(DrawnNumbers drawn, DecimalMark mark) {
        List<SolvedPart> parts = new ArrayList<>();
        for (DrawnPart part : drawn.parts()) {
            Unit unit = part.part().unit();
            parts.add(new SolvedPart(
                    drawn.prompt(parts.size(), mark),
                    rounded(part, part.expected(), mark),
                    part.part().tolerance().wordsFor(part.expected(), unit, mark),
                    part.wrongAnswers().stream()
                            .map(wrong -> new SlipLine(
                                    wrong.slip().title(),
                                    rounded(part, unit.fromBase(wrong.band().centre()), mark),
                                    wrong.line()))
                            .toList(),
                    Working.lines(Working.upTo(drawn, part.part().of()), mark),
                    List.of()));
        }
        List<WorkingLine> given = Working.lines(
                drawn.template().givenSteps().stream()
                        .map(ref -> Working.step(drawn, ref).orElseThrow())
                        .toList(),
                mark);
        return new SolvedView(drawn.seed(), drawn.story(mark), null, given, parts, drawn.hints(mark));
    }

    private static String rounded(DrawnPart part, Rational value, DecimalMark mark) {
        return Feedback.rounded(value, part.part().readability(), part.part().unit(), mark);
    }

    private static List<SlipLine> slips(DrawnChoice drawn) {
        if (!(drawn instanceof DrawnOptions options)) {
            return List.of();
        }
        return options.shown().stream()
                .filter(option -> !option.slip().isEmpty())
                .map(option -> new SlipLine(option.slip(), option.text(), option.why()))
                .toList();
    }
}
