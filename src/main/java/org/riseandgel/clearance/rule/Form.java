package org.riseandgel.clearance.rule;

/** The form in which the salt is handled. */
public enum Form {
    POWDER,
    DISPERSION
}
