package org.riseandgel.exercise;

import java.util.List;
import java.util.Optional;
import org.riseandgel.core.quantity.DecimalMark;

/** Explains an item that was handed in without an answer. */
public final class LeftOpen {
    private static final String TITLE = "Left open";

    private LeftOpen() {}

    /** The right answer to a part, counted from 0, and its working or its reasons, in the school's decimal mark. */
    public static FeedbackView of(DrawnExercise drawn, int part, DecimalMark mark) {
        return drawn instanceof DrawnChoice choice ? of(choice, mark) : of((DrawnNumbers) drawn, part, mark);
    }

    private static FeedbackView of(DrawnNumbers drawn, int part, DecimalMark mark) {
        DrawnPart drawnPart = drawn.part(part);
        NumericTemplate.Part asked = drawnPart.part();
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
                Working.lines(Working.upTo(drawn, asked.of()), mark),
                List.of());
    }

    private static FeedbackView of(DrawnChoice drawn, DecimalMark mark) {
        return new FeedbackView(
                0,
                drawn.prompt(0, mark),
                Verdict.WRONG,
                TITLE,
                "",
                drawn.words(drawn.right()),
                "",
                Optional.empty(),
                "",
                List.of(),
                drawn.notes(drawn.right()).stream().map(LeftOpen::nothingChosen).toList());
    }

    private static ChoiceNote nothingChosen(ChoiceNote note) {
        return new ChoiceNote(note.mark(), note.text(), note.picture(), TITLE, note.right(), false, note.why());
    }
}
