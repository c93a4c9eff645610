package org.riseandgel.exercise;

/** An exercise whose answer is chosen from what is shown. */
public sealed interface ChoiceTemplate extends ExerciseTemplate permits OptionsTemplate, OrderTemplate, MatchTemplate {
    /** How many options, steps or pairs a draw shows. */
    int shown();

    /** The draw that a seed stands for. */
    DrawnChoice drawn(long seed);
}
