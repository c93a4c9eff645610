package org.riseandgel.practice;

import java.time.Instant;
import java.time.LocalDate;

/**
 * What an answer means for a standing.
 *
 * @param right whether the verdict was "right"
 * @param hinted whether a hint of the draw or the worked example had been opened before; such an answer counts as 0
 * @param at when it was given
 * @param day the school's calendar day of that moment
 * @param draw the draw as a whole, as far as this answer ends it
 */
public record Mark(boolean right, boolean hinted, Instant at, LocalDate day, Draw draw) {

    /** What a draw came to: only its last answer tells. */
    public enum Ending {
        NOT_YET,
        RIGHT,
        HELPED,
        WRONG
    }

    /**
     * The rung of the draw and what it came to.
     *
     * @param needed how many right draws a day of return of this skill wants
     */
    public record Draw(Rung rung, Ending ending, int needed) {}

    boolean counts() {
        return right && !hinted;
    }
}
