package org.riseandgel.practice;

import java.time.Instant;
import org.riseandgel.exercise.ReadAnswer;
import org.riseandgel.exercise.Verdict;

/**
 * An answer as it was stored, never changed afterwards.
 *
 * @param part the number of the part, from 0
 * @param typed what was typed, to the letter, or the places that were chosen
 * @param readValue the number read from it, as an exact fraction in the unit, or the places that were chosen
 * @param readUnit code of the unit that was typed; empty when none was
 * @param readFigures the significant figures as written
 * @param verdict name of the verdict
 * @param slip id of the slip or, of a choice, the name of the mistake; null when none was recognised
 * @param expected the right answer with its unit, as it was shown
 * @param hints how many hints of the draw were open
 * @param shownAt when the part could first be seen
 * @param answeredAt when the answer came
 * @param coreVersion which rules judged it
 * @param said what its person said besides
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
        String coreVersion,
        Said said) {

    /**
     * What was said with an answer or done before it.
     *
     * @param confidence how sure the person was; null in answers from before it was asked
     * @param estimate exponent of the decade that was chosen first; null when none was asked
     * @param lookedUp whether the worked example had been looked up
     */
    public record Said(Confidence confidence, Integer estimate, boolean lookedUp) {
        /** Nothing said, nothing looked up. */
        public static final Said NOTHING = new Said(null, null, false);
    }

    /** Whether it does not count towards the skill: a hint was open, or the worked example had been looked up. */
    public boolean isHelped() {
        return hints > 0 || said.lookedUp();
    }

    /** Whether the answer was right. */
    public boolean isRight() {
        return Verdict.valueOf(verdict).isRight();
    }

    /** The answer as it was read then, whatever the school's decimal mark is now. */
    ReadAnswer read() {
        return ReadAnswer.stored(typed, readValue, readUnit, readFigures);
    }
}
