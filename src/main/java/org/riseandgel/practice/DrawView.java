package org.riseandgel.practice;

import java.util.List;
import java.util.UUID;
import org.riseandgel.clearance.BenchGate;
import org.riseandgel.exercise.ChoiceView;
import org.riseandgel.exercise.WorkingLine;

/**
 * A draw as its person may see it now: nothing in it says what the answer to an open part is.
 *
 * @param rung the rung of the ladder it was drawn on
 * @param story the exercise's story with the drawn numbers
 * @param parts how many parts there are
 * @param answered the parts that were answered, in order, with their feedback
 * @param open the part that is asked now; null when none is
 * @param next the level that is offered for the next draw of the skill
 * @param levels the levels at which the skill has exercises
 * @param item its place in a session of mixed items; null outside of one
 * @param left what the exercise leaves to do
 * @param bench what the register says, where it is done at the bench with the salt; null where it is not
 */
public record DrawView(
        UUID id,
        String skill,
        String skillTitle,
        String title,
        int level,
        Rung rung,
        String story,
        int parts,
        List<Answered> answered,
        Open open,
        int next,
        List<Integer> levels,
        Item item,
        Left left,
        BenchGate.Told bench) {

    /** The place of a draw in a session of mixed items, from 1. */
    public record Item(int number, int of) {
        /** Whether no item follows. */
        public boolean isLast() {
            return number >= of;
        }
    }

    /**
     * What the exercise of the draw leaves to do.
     *
     * @param exercise id of the exercise
     * @param held why it is not drawn before its worked example was seen; null when it is
     * @param lookAt the part, from 0, whose explanation is still to be looked at because its answer was sure and wrong;
     *     null when there is none in this draw
     */
    public record Left(String exercise, Held held, Integer lookAt) {
        /** Whether it is held after wrong answers. */
        public boolean isWrong() {
            return held == Held.WRONG;
        }

        /** Whether it is held after answers that came too fast. */
        public boolean isFast() {
            return held == Held.FAST;
        }
    }

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
     * @param plan what to find in which order, where the rung shows it
     * @param decades what to choose an estimate from, while one has to be made first; empty otherwise
     * @param estimate the estimate that was made; empty when none was
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
            ChoiceView choice,
            List<String> plan,
            List<Estimates.Choice> decades,
            String estimate) {}

    /** The same with what the register says; null where nothing is done at the bench. */
    DrawView withBench(BenchGate.Told told) {
        return new DrawView(
                id,
                skill,
                skillTitle,
                title,
                level,
                rung,
                story,
                parts,
                answered,
                open,
                next,
                levels,
                item,
                left,
                told);
    }

    /** What the page of an open part is called: in a mixed session the name must not tell the way of working. */
    public String heading() {
        return item == null ? title : "Mixed practice, item %d of %d".formatted(item.number(), item.of());
    }

    /** The words to say how sure one is. */
    public List<Confidence> sureWords() {
        return List.of(Confidence.values());
    }

    /** The part of that number, or null if it was not answered. */
    public Answered answered(int part) {
        return part >= 0 && part < answered.size() ? answered.get(part) : null;
    }

    /** Whether nothing is asked any more. */
    public boolean isFinished() {
        return open == null;
    }
}
