package org.riseandgel.clearance.rule;

/** Why somebody was suspended. */
public enum Trigger {
    INCIDENT,
    NEAR_MISS,
    UNSAFE_ACT,
    RECALL_FAILED,
    RESPIRATOR_LAPSED,
    PARTY_WITHDRAWN,
    SDS_DELTA_OVERDUE,
    OTHER
}
