package org.riseandgel.grading;

import java.time.Duration;
import java.util.List;
import org.riseandgel.exercise.ChoiceNote;
import org.riseandgel.exercise.WorkingLine;

/**
 * One part of an item with everything that may be said when its result is told.
 *
 * @param part from 0
 * @param typed as it was typed; empty when it was left open
 * @param line one line that says why; empty when the answer is right
 * @param credit what of it counts, in percent
 * @param change the newest change of its mark; null when none
 * @param time from the act before to the answer; null when it was left open
 */
record PartTold(
        int part,
        String prompt,
        MarkWords mark,
        String typed,
        String asRead,
        String expected,
        String tolerance,
        String line,
        List<WorkingLine> working,
        List<ChoiceNote> notes,
        int credit,
        MarkChange change,
        Duration time) {
    public boolean isOpen() {
        return time == null;
    }
}
