package org.riseandgel.practice;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.exercise.Answers;
import org.riseandgel.exercise.CoreVersion;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.Judged;
import org.riseandgel.exercise.ReadAnswer;

/** Turns a judged answer into the answer that is stored and into what it means for the standing. */
final class Marking {
    private Marking() {}

    /**
     * What an answer is judged with besides itself.
     *
     * @param needed how many right draws a day of return of the skill wants
     */
    record At(Confidence confidence, Instant now, DecimalMark mark, ZoneId zone, int needed) {}

    /** An answer to the open part of a draw, with all that follows from it: to be stored as one. */
    record Marked(StoredDraw draw, StoredAnswer answer, Standing after, ExerciseStanding with, boolean last) {}

    static Marked marked(StoredDraw draw, DrawnExercise drawn, ReadAnswer read, At at) {
        Judged judged = Answers.judge(drawn, draw.nextPart(), read, at.mark);
        boolean last = draw.nextPart() + 1 == drawn.partCount();
        StoredAnswer answer = answer(draw, read, judged, said(draw, last, at.confidence), at.now);
        return new Marked(
                draw,
                answer,
                draw.standing().after(mark(draw, answer, last, at.zone, at.needed)),
                draw.withExercise().after(given(draw, answer)),
                last);
    }

    /** The estimate of a draw is about its last part. */
    private static StoredAnswer.Said said(StoredDraw draw, boolean last, Confidence confidence) {
        return new StoredAnswer.Said(
                confidence,
                last ? draw.setting().estimate() : null,
                draw.setting().lookedUp());
    }

    private static StoredAnswer answer(
            StoredDraw draw, ReadAnswer read, Judged judged, StoredAnswer.Said said, Instant now) {
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
                CoreVersion.CURRENT,
                said);
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
