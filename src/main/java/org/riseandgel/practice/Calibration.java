package org.riseandgel.practice;

import java.util.List;

/**
 * How often a person was right when they said "guess", "fairly sure" or "sure". For the person to learn from; it changes no
 * mark and ranks nobody.
 */
public record Calibration(List<Line> lines) {
    /** Below so many answers a share says little and is marked as such: judgement, no source. */
    public static final int FEW = 10;

    public Calibration {
        lines = List.copyOf(lines);
    }

    /** One word, and what came of it. */
    public record Line(Confidence confidence, int answers, int right) {
        /** Share right, 0 to 1; 0 without an answer. */
        public double share() {
            return answers == 0 ? 0 : (double) right / answers;
        }

        /** Share right in whole per cent, rounded half up. */
        public long percent() {
            return answers == 0 ? 0 : Math.floorDiv(200L * right + answers, 2L * answers);
        }

        /** Whether there are so few answers that the share says little. */
        public boolean isFew() {
            return answers < FEW;
        }
    }

    static Calibration of(ExerciseStanding.Tally tally) {
        return new Calibration(List.of(
                new Line(Confidence.GUESS, tally.guess(), tally.guessRight()),
                new Line(Confidence.FAIRLY, tally.fairly(), tally.fairlyRight()),
                new Line(Confidence.SURE, tally.sure(), tally.sureRight())));
    }

    /** Whether no answer said how sure it was. */
    public boolean isEmpty() {
        return lines.stream().allMatch(line -> line.answers() == 0);
    }

    /** Answers that were sure and wrong. */
    public int sureAndWrong() {
        Line sure = lines.get(lines.size() - 1);
        return sure.answers() - sure.right();
    }
}
