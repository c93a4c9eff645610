package org.riseandgel.practice;

/** Somebody wants to see or answer what an open check of theirs asks: here it would tell how it is answered. */
final class WaitsForCheck extends RuntimeException {
    /** Where it is said why, and where the check is. */
    static final String ADDRESS = "/checks?waits=practice";

    private static final long serialVersionUID = 1L;

    WaitsForCheck() {
        super("the exercise is asked in an open check", null, false, false);
    }
}
