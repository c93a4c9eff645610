package org.riseandgel.sitting;

/**
 * An answer as it was read: what is saved, and what can be judged again from what is saved.
 *
 * @param typed what was typed, to the letter
 * @param value the number read from it, as an exact fraction in the unit
 * @param unit code of the unit that was typed; empty when none was
 * @param figures the significant figures as written
 * @param question what is unclear and how to write it; empty when it can be judged
 */
record ReadAnswer(String typed, String value, String unit, String figures, String question) {
    /** Whether it can be judged. */
    boolean isClear() {
        return question.isEmpty();
    }
}
