package org.riseandgel.exercise;

import java.util.Optional;
import org.riseandgel.core.quantity.DecimalMark;

/** Explains an item that was handed in without an answer. */
public final class LeftOpen {
    private static final String TITLE = "Left open";

    private LeftOpen() {}

    /** The right answer to a part, counted from 0, and its working, in the school's decimal mark. */
    public static FeedbackView of(DrawnExercise drawn, int part, DecimalMark mark) {
        DrawnPart drawnPart = drawn.part(part);
        ExerciseTemplate.Part asked = drawnPart.part();
        return new FeedbackView(
                part,
                drawn.prompt(part, mark),
                Verdict.WRONG,
                TITLE,
                "",
                Feedback.rounded(drawnPart.expected(), asked.readability(), asked.unit(), mark),
                asked.tolerance().wordsFor(drawnPart.expected(), asked.unit(), mark),
                Optional.empty(),
                "",
                Working.lines(Working.upTo(drawn, asked.of()), mark));
    }
}
