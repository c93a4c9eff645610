package org.riseandgel.practice;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.Reading;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.exercise.CoreVersion;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.Feedback;
import org.riseandgel.exercise.Graded;

/** Turns a judged reading into the answer that is stored and into what it means for the standing. */
final class Marking {
    private Marking() {}

    static StoredAnswer answer(
            StoredDraw draw,
            DrawnExercise drawn,
            Reading reading,
            Graded graded,
            DecimalMark mark,
            Confidence confidence,
            Instant now) {
        int part = draw.nextPart();
        return new StoredAnswer(
                part,
                reading.typed(),
                reading.value().toString(),
                reading.typedUnit().map(Unit::code).orElse(""),
                reading.figures().toString(),
                graded.verdict().name(),
                graded.slip().map(Slip::id).orElse(null),
                Feedback.of(drawn, part, graded, mark).expected(),
                draw.hintsShown(),
                draw.nextShownAt(),
                now,
                CoreVersion.CURRENT,
                new StoredAnswer.Said(
                        confidence,
                        Estimates.isAskedFor(drawn, part) ? draw.setting().estimate() : null,
                        draw.setting().lookedUp()));
    }

    /** What an answer means for the standing in the skill; a day of return of that skill wants so many right draws. */
    static Mark mark(StoredDraw draw, StoredAnswer answer, boolean last, ZoneId zone, int needed) {
        return new Mark(
                answer.isRight(),
                answer.isHelped(),
                answer.answeredAt(),
                answer.answeredAt().atZone(zone).toLocalDate(),
                new Mark.Draw(draw.rung(), last ? ending(draw, answer) : Mark.Ending.NOT_YET, needed));
    }

    /** What it means for the standing with the exercise. */
    static ExerciseStanding.Given given(StoredDraw draw, StoredAnswer answer) {
        List<FastGuess.Pace> paces = new ArrayList<>();
        paces.add(new FastGuess.Pace(Duration.between(answer.shownAt(), answer.answeredAt()), answer.isRight()));
        paces.addAll(draw.paces());
        return new ExerciseStanding.Given(
                draw.id(),
                answer.part(),
                answer.isRight(),
                answer.isHelped(),
                answer.said().confidence(),
                FastGuess.isPattern(paces),
                answer.answeredAt());
    }

    private static Mark.Ending ending(StoredDraw draw, StoredAnswer lastAnswer) {
        boolean allRight = lastAnswer.isRight() && draw.answers().stream().allMatch(StoredAnswer::isRight);
        if (!allRight) {
            return Mark.Ending.WRONG;
        }
        return lastAnswer.isHelped() ? Mark.Ending.HELPED : Mark.Ending.RIGHT;
    }
}
