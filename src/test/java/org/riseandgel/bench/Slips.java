package org.riseandgel.bench;

import org.riseandgel.core.quantity.Quantity;

/** Finds a slip's wrong answer in an outcome. */
final class Slips {
    private Slips() {}

    static Quantity of(Outcome outcome, Slip slip, String result) {
        return outcome.slipsOf(result).stream()
                .filter(answer -> answer.slip() == slip)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + slip + " in " + outcome.slipsOf(result)))
                .wrong();
    }
}
