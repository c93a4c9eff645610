package org.riseandgel.practice;

/** Somebody wants to see or answer what is done at the bench with the salt, and the register says no. */
final class NotAtTheBench extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String exercise;

    NotAtTheBench(String exercise) {
        super("not cleared for what the exercise has one do", null, false, false);
        this.exercise = exercise;
    }

    /** Where it is said why, and who may. */
    String address() {
        return BenchGatePages.address(exercise);
    }
}
