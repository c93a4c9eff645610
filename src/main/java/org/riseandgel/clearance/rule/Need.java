package org.riseandgel.clearance.rule;

/** What a grant or a reinstatement needs, in the order in which it is shown. */
public enum Need {
    SCOPE_OPEN,
    AGE,
    TRAINING,
    KNOWLEDGE,
    OBSERVATION,
    PPE,
    SDS_READ,
    RESPIRATOR,
    FIT_FOR_TASK,
    DELTA_DONE,
    DECIDER_QUALIFIED,
    SEPARATION,
    NOT_SUSPENDED,
    SUSPENDED
}
