package org.riseandgel.practice;

import java.time.Instant;
import java.time.ZoneId;
import org.riseandgel.exercise.CoreVersion;
import org.riseandgel.exercise.Judged;
import org.riseandgel.exercise.ReadAnswer;

/** Turns a judged answer into the answer that is stored and into what it means for the standing. */
final class Marking {
    private Marking() {}

    static StoredAnswer answer(StoredDraw draw, ReadAnswer read, Judged judged, Instant now) {
        return new StoredAnswer(
                draw.nextPart(),
                read.typed(),
                read.value(),
                read.unit(),
                read.figures(),
                judged.verdict().name(),
                judged.slip().orElse(null),
                judged.feedback().expected(),
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
