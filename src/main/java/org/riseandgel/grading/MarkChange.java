package org.riseandgel.grading;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * A change of a mark; the newest one of a part stands.
 *
 * @param credit what of the part counts, in percent
 * @param verdict name of the verdict that a job gave; null where none was given
 * @param regrade the job that changed it or whose change was undone; null for a correction
 * @param mended the version of the exercise that a job judged by; null unless it is the job's change
 * @param saves how often the answer had been kept that it was made for, 0 where there was none; null where nobody noted it
 */
record MarkChange(
        long id,
        UUID work,
        int number,
        int part,
        Kind kind,
        int credit,
        String verdict,
        String slip,
        String expected,
        String reason,
        UUID by,
        Instant at,
        UUID regrade,
        String mended,
        Integer saves) {
    static final int ALL = 100;
    static final int NOTHING = 0;

    /** Whether it was made for this answer and not for one that the person has changed since. */
    boolean isFor(Optional<ItemAnswer> answer) {
        return saves == null || saves == savesOf(answer);
    }

    static int savesOf(Optional<ItemAnswer> answer) {
        return answer.map(ItemAnswer::saves).orElse(0);
    }

    /** Who or what changed it. */
    enum Kind {
        /** A person, by hand. */
        CORRECTION,
        /** A job that judged again. */
        REGRADE,
        /** Somebody who undid that job. */
        UNDO
    }
}
