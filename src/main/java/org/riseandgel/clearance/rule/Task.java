package org.riseandgel.clearance.rule;

/** What somebody does with the salt; a clearance names each task that it covers. */
public enum Task {
    STORE,
    WEIGH,
    DISPERSE,
    DOSE,
    CLEAN,
    SPILL,
    WASTE
}
