package org.riseandgel.practice;

/**
 * What a typed answer is read as, before it is final.
 *
 * @param typed the text as it came
 * @param echo what was read, in plain notation; empty when there is a question, and for a choice
 * @param question what is unclear and how to write it; empty when the answer can be handed in
 */
public record ReadBack(String typed, String echo, String question) {
    /** Whether something was read that should be looked at before it is handed in; a choice shows itself. */
    public boolean isToBeSeen() {
        return !echo.isEmpty();
    }

    /** Whether the answer can be handed in as it is. */
    public boolean isClear() {
        return question.isEmpty();
    }
}
