package org.riseandgel.practice;

import java.time.Instant;

/**
 * An answer as it was stored, never changed afterwards.
 *
 * @param part the number of the part, from 0
 * @param typed what was typed, to the letter
 * @param readValue the number read from it, as an exact fraction in the unit
 * @param readUnit code of the unit that was typed; empty when none was
 * @param readFigures the significant figures as written
 * @param verdict name of the verdict
 * @param slip id of the slip; null when none was recognised
 * @param expected the right answer with its unit, as it was shown
 * @param hints how many hints of the draw were open
 * @param shownAt when the part could first be seen
 * @param answeredAt when the answer came
 * @param coreVersion which rules judged it
 */
public record StoredAnswer(
        int part,
        String typed,
        String readValue,
        String readUnit,
        String readFigures,
        String verdict,
        String slip,
        String expected,
        int hints,
        Instant shownAt,
        Instant answeredAt,
        String coreVersion) {
    /** The verdict of a right answer, as it is stored. */
    static final String RIGHT = "RIGHT";

    /** Whether the answer was right. */
    public boolean isRight() {
        return RIGHT.equals(verdict);
    }
}
