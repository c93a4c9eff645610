package org.riseandgel.clearance.rule;

/** What one needs a qualification of one's own for. */
public enum Act {
    TRAIN,
    OBSERVE,
    DECIDE
}
