package org.riseandgel.practice;

import java.time.Instant;
import java.time.ZoneId;
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
            StoredDraw draw, DrawnExercise drawn, Reading reading, Graded graded, DecimalMark mark, Instant now) {
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
                CoreVersion.CURRENT);
    }

    static Mark mark(StoredDraw draw, StoredAnswer answer, boolean last, ZoneId zone) {
        return new Mark(
                answer.isRight(),
                answer.hints() > 0,
                answer.answeredAt(),
                answer.answeredAt().atZone(zone).toLocalDate(),
                new Mark.Draw(draw.level(), last ? ending(draw, answer) : Mark.Ending.NOT_YET));
    }

    private static Mark.Ending ending(StoredDraw draw, StoredAnswer lastAnswer) {
        boolean allRight = lastAnswer.isRight() && draw.answers().stream().allMatch(StoredAnswer::isRight);
        if (!allRight) {
            return Mark.Ending.WRONG;
        }
        return lastAnswer.hints() > 0 ? Mark.Ending.HELPED : Mark.Ending.RIGHT;
    }
}
