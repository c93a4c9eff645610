package org.riseandgel.practice;

import org.riseandgel.exercise.Verdict;

/** A verdict with the shape and the look that go with it; safety colours are kept for hazards. */
public record VerdictWords(String words, String icon, String look) {
    /** The words for a stored verdict. */
    public static VerdictWords of(String verdict) {
        Verdict known = Verdict.valueOf(verdict);
        return switch (known) {
            case RIGHT -> new VerdictWords(known.title(), "right", "is-right");
            case WRONG_UNIT -> new VerdictWords(known.title(), "unit", "is-slip");
            case SLIP, POWER_OF_TEN, ROUNDED_EARLY -> new VerdictWords(known.title(), "slip", "is-slip");
            case WRONG -> new VerdictWords(known.title(), "wrong", "is-wrong");
        };
    }
}
