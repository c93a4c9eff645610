package org.riseandgel.account.office;

import java.util.List;

/**
 * A list of people as it was read, with everything that is wrong with it. It can be taken in when nothing is wrong.
 *
 * @param entries the people, in the order of the list
 * @param faults what is wrong, by line
 */
record Roster(List<Entry> entries, List<Fault> faults) {
    /** One person of the list. */
    record Entry(int line, String name, String signInName, String role, String cohort) {}

    /**
     * One thing that is wrong.
     *
     * @param line the line in the list, from 1; 0 for the list as a whole
     */
    record Fault(int line, String message) {}

    static Roster wrong(int line, String message) {
        return new Roster(List.of(), List.of(new Fault(line, message)));
    }

    boolean isRight() {
        return faults.isEmpty();
    }
}
