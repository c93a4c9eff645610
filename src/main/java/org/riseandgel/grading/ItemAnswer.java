package org.riseandgel.grading;

import java.time.Duration;
import java.time.Instant;
import org.riseandgel.exercise.ReadAnswer;
import org.riseandgel.exercise.Verdict;

/**
 * An answer as it is stored, with the verdict that the rules of that day gave.
 *
 * @param part from 0
 * @param saves how often it was handed in; more than once only where nothing is told before the set closes
 * @param shownAt when the person had last done something in this try before it
 */
record ItemAnswer(
        int part,
        String typed,
        String readValue,
        String readUnit,
        String readFigures,
        Verdict verdict,
        String slip,
        String expected,
        int saves,
        Instant shownAt,
        Instant answeredAt,
        String coreVersion) {
    public boolean isRight() {
        return verdict.isRight();
    }

    /** The answer as it was read then. */
    ReadAnswer read() {
        return ReadAnswer.stored(typed, readValue, readUnit, readFigures);
    }

    /** From the act before to this answer. */
    public Duration time() {
        return Duration.between(shownAt, answeredAt);
    }
}
