package org.riseandgel.exercise;

import java.util.List;
import java.util.Optional;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberReader;
import org.riseandgel.core.quantity.Reading;

/** Reads and judges answers to exercises of every kind. Pure functions, without clock or chance. */
public final class Answers {
    private Answers() {}

    /**
     * Reads an answer to a part, counted from 0: a number with its unit as it was typed, or the places that were chosen.
     * What cannot be judged comes back with a question, which costs nothing and tells nothing about how close it is.
     */
    public static ReadAnswer read(DrawnExercise drawn, int part, String typed, DecimalMark mark) {
        if (drawn instanceof DrawnChoice choice) {
            return choice.read(typed);
        }
        Reading reading = NumberReader.of(mark).read(typed);
        return ReadAnswer.of(reading, Grader.check((DrawnNumbers) drawn, part, reading));
    }

    /** What was read, to be looked at before it is handed in; empty for a choice, which can be seen as it is made. */
    public static String echo(DrawnExercise drawn, ReadAnswer answer, DecimalMark mark) {
        return drawn instanceof DrawnNumbers && answer.isClear()
                ? answer.reading().echo(mark)
                : "";
    }

    /** What was read, in words, for a list of answers. */
    public static String words(DrawnExercise drawn, ReadAnswer answer, DecimalMark mark) {
        return drawn instanceof DrawnChoice choice
                ? choice.words(answer.value())
                : answer.reading().echo(mark);
    }

    /**
     * Judges an answer to a part, counted from 0.
     *
     * @throws IllegalArgumentException when the answer still has a question
     */
    public static Judged judge(DrawnExercise drawn, int part, ReadAnswer answer, DecimalMark mark) {
        if (!answer.isClear()) {
            throw new IllegalArgumentException("not to be judged yet: " + answer.question());
        }
        if (drawn instanceof DrawnChoice choice) {
            return judge(choice, answer, mark);
        }
        DrawnNumbers numbers = (DrawnNumbers) drawn;
        Graded graded = Grader.grade(numbers, part, answer.reading());
        return new Judged(graded.verdict(), graded.slip().map(Slip::id), Feedback.of(numbers, part, graded, mark));
    }

    private static Judged judge(DrawnChoice drawn, ReadAnswer answer, DecimalMark mark) {
        String chosen = answer.value();
        Verdict verdict = drawn.isRight(chosen) ? Verdict.RIGHT : Verdict.WRONG;
        Optional<String> slip = verdict.isRight() ? Optional.empty() : drawn.slip(chosen);
        FeedbackView feedback = new FeedbackView(
                0,
                drawn.prompt(0, mark),
                verdict,
                verdict.title(),
                drawn.words(chosen),
                drawn.words(drawn.right()),
                "",
                slip,
                drawn.line(chosen),
                List.of(),
                drawn.notes(chosen));
        return new Judged(verdict, slip, feedback);
    }
}
