package org.riseandgel.clearance.rule;

/** The answer of the register. */
public enum Status {
    CLEARED,
    SUPERVISED_ONLY,
    NOT_CLEARED
}
