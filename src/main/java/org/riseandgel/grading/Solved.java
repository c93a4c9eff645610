package org.riseandgel.grading;

import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.exercise.Answers;
import org.riseandgel.exercise.DrawnChoice;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.DrawnNumbers;
import org.riseandgel.exercise.DrawnPart;
import org.riseandgel.exercise.FeedbackView;
import org.riseandgel.exercise.ReadAnswer;

/** The right answer to a part with its working: for those who teach, and for parts that were left open. */
final class Solved {
    private Solved() {}

    static FeedbackView of(DrawnExercise drawn, int part, DecimalMark mark) {
        return Answers.judge(drawn, part, right(drawn, part), mark).feedback();
    }

    /** The right answer, exactly. */
    static ReadAnswer right(DrawnExercise drawn, int part) {
        if (drawn instanceof DrawnChoice choice) {
            return choice.read(choice.right());
        }
        DrawnPart asked = ((DrawnNumbers) drawn).part(part);
        String value = asked.expected().toString();
        return ReadAnswer.stored(value, value, asked.part().unit().code(), "");
    }
}
