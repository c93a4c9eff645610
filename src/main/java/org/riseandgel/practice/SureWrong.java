package org.riseandgel.practice;

/** What is left to do about an answer that somebody was sure of and that was wrong. The names are stored and stay. */
public enum SureWrong {
    /** Look at the explanation. */
    LOOK,
    /** The explanation was seen: one right answer on fresh numbers closes it. */
    AGAIN
}
