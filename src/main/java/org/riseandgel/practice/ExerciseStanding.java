package org.riseandgel.practice;

import java.time.Instant;
import java.util.UUID;

/**
 * Where a person stands with one exercise, moved on by one answer at a time; a pure rule without clock or database.
 *
 * <p>Three wrong answers in a row hold the exercise: it is not drawn again until its worked example was seen. So does a
 * pattern of fast guesses. A wrong answer that somebody was sure of asks for a look at its explanation; a later right
 * answer without help closes that.
 *
 * @param answers how many answers were given
 * @param wrongInRow wrong answers since the last right one, or since the worked example was seen
 * @param lastAt when the latest answer was given; null before the first
 * @param held why it is held; null when it is not
 * @param lastHeld why it was held the last time, also when it is free again; null when it never was
 * @param heldAt when that began
 * @param sureWrong what is left to do about an answer that was sure and wrong; null when nothing is
 * @param sureWrongDraw the draw of that answer; null when there is none
 * @param sureWrongPart the part of that answer
 * @param tally how sure the answers were, and how many of them were right
 */
record ExerciseStanding(
        int answers,
        int wrongInRow,
        Instant lastAt,
        Held held,
        Held lastHeld,
        Instant heldAt,
        SureWrong sureWrong,
        UUID sureWrongDraw,
        int sureWrongPart,
        Tally tally) {
    /** Before the first answer. */
    static final ExerciseStanding NONE = new ExerciseStanding(0, 0, null, null, null, null, null, null, 0, Tally.NONE);

    private static final int HELD_AFTER = 3;

    /** How many answers were given with each word, and how many of those were right. */
    record Tally(int guess, int guessRight, int fairly, int fairlyRight, int sure, int sureRight) {
        static final Tally NONE = new Tally(0, 0, 0, 0, 0, 0);

        Tally plus(Confidence confidence, boolean right) {
            int one = right ? 1 : 0;
            if (confidence == null) {
                return this;
            }
            return switch (confidence) {
                case GUESS -> new Tally(guess + 1, guessRight + one, fairly, fairlyRight, sure, sureRight);
                case FAIRLY -> new Tally(guess, guessRight, fairly + 1, fairlyRight + one, sure, sureRight);
                case SURE -> new Tally(guess, guessRight, fairly, fairlyRight, sure + 1, sureRight + one);
            };
        }
    }

    /**
     * One answer, as far as this standing needs it.
     *
     * @param helped whether a hint was open or the worked example had been looked up
     * @param confidence null when none was said
     * @param fastGuess whether it completes a pattern of fast guesses
     */
    record Given(
            UUID draw, int part, boolean right, boolean helped, Confidence confidence, boolean fastGuess, Instant at) {}

    ExerciseStanding after(Given given) {
        int wrong = given.right() ? 0 : wrongInRow + 1;
        Held now = held(given, wrong);
        boolean anew = now != null && now != held;
        ExerciseStanding counted = new ExerciseStanding(
                answers + 1,
                wrong,
                lastAt == null || given.at().isAfter(lastAt) ? given.at() : lastAt,
                now,
                anew ? now : lastHeld,
                anew ? given.at() : heldAt,
                sureWrong,
                sureWrongDraw,
                sureWrongPart,
                tally.plus(given.confidence(), given.right()));
        if (!given.right() && given.confidence() == Confidence.SURE) {
            return counted.with(SureWrong.LOOK, given.draw(), given.part());
        }
        return given.right() && !given.helped() ? counted.with(null, null, 0) : counted;
    }

    private Held held(Given given, int wrong) {
        if (wrong >= HELD_AFTER) {
            return Held.WRONG;
        }
        return given.fastGuess() ? Held.FAST : held;
    }

    private ExerciseStanding with(SureWrong left, UUID draw, int part) {
        return new ExerciseStanding(answers, wrongInRow, lastAt, held, lastHeld, heldAt, left, draw, part, tally);
    }
}
