package org.riseandgel.core.quantity;

/** What came of reading what a person typed. Only {@link #OK} is judged; the others are asked again. */
public enum ReadingOutcome {
    OK,
    EMPTY,
    MALFORMED,
    AMBIGUOUS,
    UNKNOWN_UNIT,
    OUT_OF_RANGE,
    TOO_LONG
}
