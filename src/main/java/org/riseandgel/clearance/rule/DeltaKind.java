package org.riseandgel.clearance.rule;

/** What changed, so that people who are cleared need a short training about it. */
public enum DeltaKind {
    NEW_SDS_REVISION,
    NEW_PRODUCT_GRADE,
    NEW_ROOM_OR_SCALE,
    NEW_PPE,
    CHANGED_PROCEDURE,
    NOT_HANDLED
}
