package org.riseandgel.core.drying;

/** What weighings of a piece tell: a curve, or why there is none yet. */
public sealed interface DryingOutcome permits DryingCurve, DryingOutcome.CannotTell {

    /** Why there is no curve, and what would help, in plain words. */
    record CannotTell(Reason reason, String words) implements DryingOutcome {}

    /** Why weighings do not tell a curve. */
    enum Reason {
        /** Fewer than three weighings at different times. */
        TOO_FEW,
        /** The piece gets heavier, or keeps its mass from the first weighing on. */
        NOT_DRYING,
        /** Still losing water evenly: how much is left may be anything. */
        NOT_LEVELLING
    }
}
