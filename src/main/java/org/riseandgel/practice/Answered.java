package org.riseandgel.practice;

import org.riseandgel.exercise.FeedbackView;

/**
 * An answered part with everything that may be said now.
 *
 * @param stored the answer and its verdict as they were stored
 * @param feedback what is explained about it
 * @param estimate how the estimate before it compares; null when none was made
 */
public record Answered(StoredAnswer stored, FeedbackView feedback, Estimates.Check estimate) {
    /** The number of the part, from 0. */
    public int part() {
        return stored.part();
    }

    /** The verdict in words, and which slip it was. */
    public String heading() {
        return switch (feedback.verdict()) {
            case SLIP -> feedback.slipTitle().map(slip -> "Slip: " + slip).orElse(feedback.title());
            case WRONG ->
                feedback.slipTitle().map(slip -> feedback.title() + ": " + slip).orElse(feedback.title());
            default -> feedback.title();
        };
    }

    /** The stored verdict with its words and its look. */
    public VerdictWords verdict() {
        return VerdictWords.of(stored.verdict());
    }
}
