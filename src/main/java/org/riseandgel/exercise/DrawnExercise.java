package org.riseandgel.exercise;

import java.util.List;
import org.riseandgel.core.quantity.DecimalMark;

/**
 * An exercise as one person gets it. It holds the right answers: pages get a {@link PublicView} of it, never this.
 * {@link Answers} reads and judges what is handed in.
 */
public sealed interface DrawnExercise permits DrawnNumbers, DrawnChoice {
    /** What it was drawn from. */
    ExerciseTemplate template();

    /** The seed that gives just this draw at the first try; store this one. */
    long seed();

    /** How many parts are answered, one after the other. */
    int partCount();

    /** The story; empty when the question says it all. */
    String story(DecimalMark mark);

    /** The question of a part, counted from 0. */
    String prompt(int part, DecimalMark mark);

    /** The hints, from the gentle to the plain. */
    List<String> hints(DecimalMark mark);
}
