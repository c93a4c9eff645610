package org.riseandgel.exercise;

import java.util.List;
import java.util.Optional;

/**
 * What a page says once an answer is stored.
 *
 * @param part number of the part, counted from 0
 * @param prompt the question with its numbers
 * @param title the verdict in words
 * @param asRead the answer as it was read, with its metric equivalent where that helps
 * @param expected the right value with its unit
 * @param tolerance how close it had to be: "within 2 %, that is 0.4 g"; empty for a choice
 * @param slipTitle the name of the slip, if one was recognised
 * @param line one line that says why; empty when the answer is right
 * @param working the solved steps with this person's own numbers; empty for a choice
 * @param notes what is said of each thing that could be chosen; empty for a number
 */
public record FeedbackView(
        int part,
        String prompt,
        Verdict verdict,
        String title,
        String asRead,
        String expected,
        String tolerance,
        Optional<String> slipTitle,
        String line,
        List<WorkingLine> working,
        List<ChoiceNote> notes) {
    public FeedbackView {
        working = List.copyOf(working);
        notes = List.copyOf(notes);
    }
}
