package org.riseandgel.grading;

import org.riseandgel.bench.Slip;
import org.riseandgel.exercise.Verdict;

/** A verdict with its words, its shape and its look; safety colours are kept for hazards. */
record MarkWords(String words, String icon, String look) {
    static final MarkWords OPEN = new MarkWords("Left open", "none", "is-wrong");

    static MarkWords of(Verdict verdict, String slip) {
        String named = slip == null ? "" : Slip.byId(slip).map(Slip::title).orElse(slip);
        return switch (verdict) {
            case RIGHT -> new MarkWords(verdict.title(), "right", "is-right");
            case WRONG_UNIT -> new MarkWords(verdict.title(), "unit", "is-slip");
            case SLIP -> new MarkWords(named.isEmpty() ? verdict.title() : "Slip: " + named, "slip", "is-slip");
            case POWER_OF_TEN, ROUNDED_EARLY -> new MarkWords(verdict.title(), "slip", "is-slip");
            case WRONG ->
                new MarkWords(named.isEmpty() ? verdict.title() : verdict.title() + ": " + named, "wrong", "is-wrong");
        };
    }
}
