package org.riseandgel.exercise;

import java.util.List;
import java.util.Optional;
import org.riseandgel.core.quantity.DecimalMark;

/**
 * An exercise that is answered by choosing, with what is shown and in which order. It has one part.
 *
 * <p>An answer is a few places in the order shown, such as "b" or "3 1 2 4", and never says where something stands in the
 * file. The methods that judge take an answer as {@link #read} gave it.
 */
public sealed interface DrawnChoice extends DrawnExercise permits DrawnOptions, DrawnOrder, DrawnMatch {
    @Override
    ChoiceTemplate template();

    /** What stands to be chosen from. */
    ChoiceView view();

    /** Reads what was chosen, be it complete or not. */
    ReadAnswer read(String typed);

    /** Whether an answer is right. */
    boolean isRight(String answer);

    /** The short name of the mistake that an answer shows, if it has one. */
    Optional<String> slip(String answer);

    /** An answer in the words of the exercise. */
    String words(String answer);

    /** One line on an answer that is not right; empty when there is nothing to say beyond the notes. */
    String line(String answer);

    /** What is to be said of each thing shown. */
    List<ChoiceNote> notes(String answer);

    /** The right answer, one of them where several are. */
    String right();

    /** An answer that is not right, and shows a named mistake if it can. */
    String wrong();

    /** Why this makes no exercise, if it makes none. */
    default Optional<String> fault() {
        return Optional.empty();
    }

    @Override
    default int partCount() {
        return 1;
    }

    /** Everything before the last line, which is the question. */
    @Override
    default String story(DecimalMark mark) {
        String text = template().story().strip();
        return text.substring(0, text.lastIndexOf('\n') + 1).strip();
    }

    @Override
    default String prompt(int part, DecimalMark mark) {
        String text = template().story().strip();
        return text.substring(text.lastIndexOf('\n') + 1).strip();
    }

    @Override
    default List<String> hints(DecimalMark mark) {
        return template().hints();
    }
}
