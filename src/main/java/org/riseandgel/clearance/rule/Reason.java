package org.riseandgel.clearance.rule;

/** Why somebody is not cleared, in the fixed order in which the first failing one is told. */
public enum Reason {
    /** The register cannot be read, or something in it contradicts itself. */
    UNREADABLE,
    /** No scope has this task with this substance and form in this room. */
    NO_SUCH_SCOPE,
    NEVER_GRANTED,
    WITHDRAWN,
    SUSPENDED,
    /** The observer or a trainer lost the own clearance or qualification for cause; counts as a suspension. */
    PARTY_WITHDRAWN,
    /** Fit test or respirator training ran out; counts as a suspension. */
    RESPIRATOR_LAPSED,
    /** The sheet's section 2 or 8 changed and the delta training is overdue; counts as a suspension. */
    SDS_DELTA_OVERDUE,
    /** What the grant rests on was corrected, and it does not carry the grant any more. */
    EVIDENCE_FELL,
    AGE_UNKNOWN,
    UNDER_18,
    /** Turned 18: a new decision is needed. */
    TURNED_18,
    SUPERVISOR_NOT_CLEARED,
    NOT_FIT_FOR_TASK,
    DELTA_OVERDUE,
    RENEWAL_OVERDUE,
    EXPIRED
}
