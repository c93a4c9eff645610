package org.riseandgel.grading;

/** How far a graded set is. That it has closed follows from the time and is stored nowhere. */
public enum SetState {
    /** Only those who teach the cohort see it; everything can be changed. */
    DRAFT,
    /** It is out: what it asks never changes again. */
    PUBLISHED,
    /** Taken back with a reason; nothing more is handed in and nothing counts. */
    WITHDRAWN
}
