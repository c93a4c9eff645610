package org.riseandgel.practice;

import java.util.List;
import java.util.UUID;
import org.riseandgel.exercise.ChoiceView;
import org.riseandgel.exercise.WorkingLine;

/**
 * A draw as its person may see it now: nothing in it says what the answer to an open part is.
 *
 * @param story the exercise's story with the drawn numbers
 * @param parts how many parts there are
 * @param answered the parts that were answered, in order, with their feedback
 * @param open the part that is asked now; null when none is
 * @param next the level that is offered for the next draw of the skill
 * @param levels the levels at which the skill has exercises
 */
public record DrawView(
        UUID id,
        String skill,
        String skillTitle,
        String title,
        int level,
        String story,
        int parts,
        List<Answered> answered,
        Open open,
        int next,
        List<Integer> levels) {

    /**
     * The part that is asked now.
     *
     * @param number from 0
     * @param tolerance how close is close enough, in words
     * @param because why so close and no closer
     * @param wanted what kind of answer is wanted, in words
     * @param keys which keys a phone should show: "decimal", or "text" where a unit or a fraction is likely
     * @param given steps of the working that are shown from the start
     * @param hints the hints opened so far
     * @param moreHints whether another hint can be opened
     * @param choice what there is to choose from; null where a number is asked
     */
    public record Open(
            int number,
            String prompt,
            String tolerance,
            String because,
            String wanted,
            String keys,
            List<WorkingLine> given,
            List<String> hints,
            boolean moreHints,
            ChoiceView choice) {}

    /** The part of that number, or null if it was not answered. */
    public Answered answered(int part) {
        return part >= 0 && part < answered.size() ? answered.get(part) : null;
    }

    /** Whether nothing is asked any more. */
    public boolean isFinished() {
        return open == null;
    }
}
