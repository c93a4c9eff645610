package org.riseandgel.core.rise;

/** What readings of a rise tell: a curve, or why there is none yet. */
public sealed interface RiseOutcome permits RiseCurve, RiseOutcome.CannotTell {

    /** Why there is no curve, and what would help, in plain words. */
    record CannotTell(Reason reason, String words) implements RiseOutcome {}

    /** Why readings do not tell a curve. */
    enum Reason {
        /** Fewer than three readings at different times after the start. */
        TOO_FEW,
        /** The foam falls instead of rising, or does not rise at all. */
        NOT_RISING,
        /** Still rising in a straight line: where it levels off may be anywhere. */
        NOT_LEVELLING,
        /** Level from the first reading on: how fast it rose may be anything. */
        LEVEL_FROM_THE_START
    }
}
