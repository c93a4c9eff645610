package org.riseandgel.grading;

import java.util.Optional;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.exercise.Answers;
import org.riseandgel.exercise.DrawnChoice;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.DrawnNumbers;
import org.riseandgel.exercise.Judged;

/** Judges a stored answer by the mended version of its exercise. Pure functions. */
final class Rejudged {
    private Rejudged() {}

    /**
     * The answer judged anew; empty when the mended exercise would have asked something else with this seed, because then
     * the answer was not given to it.
     */
    static Optional<Judged> of(DrawnExercise asked, DrawnExercise mended, ItemAnswer answer, DecimalMark mark) {
        return asksTheSame(asked, mended, answer.part())
                ? Optional.of(Answers.judge(mended, answer.part(), answer.read(), mark))
                : Optional.empty();
    }

    private static boolean asksTheSame(DrawnExercise asked, DrawnExercise mended, int part) {
        if (asked instanceof DrawnNumbers before && mended instanceof DrawnNumbers now) {
            return before.values().equals(now.values())
                    && part < now.partCount()
                    && before.part(part).part().unit().kind()
                            == now.part(part).part().unit().kind();
        }
        return asked instanceof DrawnChoice before
                && mended instanceof DrawnChoice now
                && before.view().equals(now.view());
    }
}
