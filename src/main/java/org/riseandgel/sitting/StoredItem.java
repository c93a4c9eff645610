package org.riseandgel.sitting;

import java.time.Instant;
import org.riseandgel.exercise.ReadAnswer;
import org.riseandgel.exercise.Verdict;

/**
 * An item of a sitting with the answer that was saved last, if any, and with its verdict once the sitting is handed in.
 *
 * @param number from 1, in the order in which the items are asked
 * @param typed what was typed, to the letter, or the places that were chosen; null while nothing is saved
 * @param readValue the number read from it as an exact fraction in the unit, or the places that were chosen
 * @param readUnit code of the unit that was typed; empty when none was
 * @param readFigures the significant figures as written
 * @param saves how often an answer was saved
 * @param savedAt when the last one was saved; null while nothing is
 * @param verdict name of the verdict; null while the sitting is open
 * @param slip id of the slip or, of a choice, the name of the mistake; null when none was recognised
 * @param expected the right answer as it is shown; null while the sitting is open
 */
record StoredItem(
        int number,
        String exercise,
        String version,
        String skill,
        boolean critical,
        long seed,
        String typed,
        String readValue,
        String readUnit,
        String readFigures,
        int saves,
        Instant savedAt,
        String verdict,
        String slip,
        String expected) {
    /** The verdict on an item that was left open. */
    static final String LEFT_OPEN = "LEFT_OPEN";

    /** An item of a new sitting. */
    static StoredItem fresh(int number, String exercise, String version, String skill, boolean critical, long seed) {
        return new StoredItem(
                number, exercise, version, skill, critical, seed, null, null, null, null, 0, null, null, null, null);
    }

    boolean isAnswered() {
        return saves > 0;
    }

    boolean isRight() {
        return Verdict.RIGHT.name().equals(verdict);
    }

    /** The answer as it was read when it was saved, whatever the school's decimal mark is now. */
    ReadAnswer read() {
        return ReadAnswer.stored(typed, readValue, readUnit, readFigures);
    }

    /** The item as it is after marking. */
    StoredItem marked(ItemMark mark) {
        return new StoredItem(
                number,
                exercise,
                version,
                skill,
                critical,
                seed,
                typed,
                readValue,
                readUnit,
                readFigures,
                saves,
                savedAt,
                mark.verdict(),
                mark.slip(),
                mark.expected());
    }

    /** Names the item only: the seed must not slip into a log. */
    @Override
    public String toString() {
        return "item " + number;
    }
}
