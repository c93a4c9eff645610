package org.riseandgel.clearance.rule;

/** One step of an observed practical and how it was done. */
public record StepSeen(String step, boolean critical, Outcome outcome) {
    /** How a step was done. */
    public enum Outcome {
        UNPROMPTED,
        PROMPTED,
        NOT_DONE,
        NOT_SEEN
    }
}
