package org.riseandgel.practice;

/** Why an exercise is not drawn for somebody until they have looked at its worked example. The names are stored and stay. */
public enum Held {
    /** Three wrong answers in a row. */
    WRONG,
    /** Three answers in a row that were too fast to have been worked out. */
    FAST
}
