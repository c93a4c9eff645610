package org.riseandgel.exercise;

/**
 * Names the rules by which answers are judged; it is stored with every answer.
 *
 * <p>It changes when the same text, seed and answer would get another verdict or another expected value than before: a
 * change to a formula of the core, to a slip's answer, to the tolerance rule or to the order of verdicts. Stricter rules
 * for new draws do not change it, because a stored seed is never drawn anew.
 */
public final class CoreVersion {
    /** The rules in force. */
    public static final String CURRENT = "1";

    private CoreVersion() {}
}
