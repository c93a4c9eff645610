package org.riseandgel.practice;

import java.time.Instant;
import java.time.LocalDate;

/**
 * Where a person stands in a skill, moved on by one answer at a time; a pure rule without clock or database.
 *
 * <p>The average moves by 0.3 of the way to each answer, average' = 0.7 · average + 0.3 · score, from 0 at the start, where
 * the score is 1 for a right answer without a hint and 0 for any other. Mastered in practice means an average of at least
 * 0.85 and answers on at least three days: six right answers in a row are the shortest way. This is a rule for practice
 * and clears nobody for anything.
 *
 * @param answers how many answers were given
 * @param rightAnswers how many of them were right, with or without a hint
 * @param average the moving average, 0 to 1
 * @param days on how many school days there was an answer
 * @param lastDay the latest of them; null before the first answer
 * @param lastAt when the latest answer was given; null before the first answer
 * @param wrongInRow wrong answers since the last right one
 * @param rightInRow right answers without a hint since the last other one
 * @param ladder the rung that is offered next
 * @param firstDay the school day of the first answer; null before it
 * @param masteredOn the school day on which mastery was first reached; null before. A later miss does not take it back,
 *     because gates ask whether it was ever reached
 * @param returns when the skill comes back
 */
public record Standing(
        int answers,
        int rightAnswers,
        double average,
        int days,
        LocalDate lastDay,
        Instant lastAt,
        int wrongInRow,
        int rightInRow,
        Ladder ladder,
        LocalDate firstDay,
        LocalDate masteredOn,
        Returns returns) {
    /** Before the first answer. */
    public static final Standing NONE =
            new Standing(0, 0, 0, 0, null, null, 0, 0, Ladder.FOOT, null, null, Returns.NONE);

    private static final double WEIGHT = 0.3;
    private static final double MASTERY = 0.85;
    private static final int MASTERY_DAYS = 3;
    private static final int STUCK_AFTER = 3;

    /** From here on more than half of the recent answers were right: judgement, no source. */
    private static final double GROWING = 0.5;

    /** The standing after one more answer. A day or a moment before the latest one, from a clock put back, counts as it. */
    public Standing after(Mark mark) {
        boolean newDay = lastDay == null || mark.day().isAfter(lastDay);
        boolean later = lastAt == null || mark.at().isAfter(lastAt);
        LocalDate day = newDay ? mark.day() : lastDay;
        double moved = (1 - WEIGHT) * average + (mark.counts() ? WEIGHT : 0);
        int touched = newDay ? days + 1 : days;
        return new Standing(
                answers + 1,
                rightAnswers + (mark.right() ? 1 : 0),
                moved,
                touched,
                day,
                later ? mark.at() : lastAt,
                mark.right() ? 0 : wrongInRow + 1,
                mark.counts() ? rightInRow + 1 : 0,
                climbed(mark.draw()),
                firstDay == null ? day : firstDay,
                masteredOn == null && isMastery(moved, touched) ? day : masteredOn,
                (newDay ? returns.onNewDay() : returns)
                        .after(mark.draw().ending(), day, mark.draw().needed()));
    }

    private static boolean isMastery(double average, int days) {
        return average >= MASTERY && days >= MASTERY_DAYS;
    }

    private Ladder climbed(Mark.Draw draw) {
        return switch (draw.ending()) {
            case NOT_YET -> ladder;
            case RIGHT -> ladder.afterRight(draw.rung());
            case HELPED -> ladder.afterHelp(draw.rung());
            case WRONG -> ladder.afterWrong(draw.rung());
        };
    }

    /** The standing in words. Three wrong answers in a row outweigh everything else, because somebody should look. */
    public SkillState state() {
        if (answers == 0) {
            return SkillState.NOT_BEGUN;
        }
        if (wrongInRow >= STUCK_AFTER) {
            return SkillState.STUCK;
        }
        if (isMastery(average, days)) {
            return SkillState.MASTERED;
        }
        return average >= GROWING ? SkillState.GROWING : SkillState.BEGUN;
    }
}
