package org.riseandgel.practice;

import java.util.List;
import org.riseandgel.exercise.Solution;

/**
 * An exercise solved from beginning to end, with numbers of its own that are in no open draw of whoever reads it.
 *
 * @param isHeld whether the exercise waits for this example to be seen
 * @param isAtFoot whether nothing of the skill was answered yet, so that somebody may try without
 */
public record WorkedExample(
        String exercise,
        String title,
        String skill,
        String skillTitle,
        String story,
        List<Solution> parts,
        boolean isHeld,
        boolean isAtFoot) {
    public WorkedExample {
        parts = List.copyOf(parts);
    }
}
