package org.riseandgel.core.quantity;

import java.util.List;
import java.util.Optional;

/**
 * What a person typed and what it was read as.
 *
 * @param typed the text exactly as it came
 * @param value the exact number in the typed unit; null unless the outcome is OK
 * @param unit the unit that was typed; null if none was, or unless the outcome is OK
 * @param figures the significant figures as written; null unless the outcome is OK
 * @param message what is wrong and how to write it, in plain words; empty when OK
 * @param choices when ambiguous, the meanings it can have, each written so that it is read as just that
 */
public record Reading(
        String typed,
        ReadingOutcome outcome,
        Rational value,
        Unit unit,
        Figures figures,
        String message,
        List<String> choices) {

    public Reading {
        choices = List.copyOf(choices);
        if ((outcome == ReadingOutcome.OK) != (value != null && figures != null && message.isEmpty())) {
            throw new IllegalArgumentException("a reading has a value or says why not, never both");
        }
    }

    static Reading ok(String typed, Rational value, Unit unit, Figures figures) {
        return new Reading(typed, ReadingOutcome.OK, value, unit, figures, "", List.of());
    }

    static Reading refused(String typed, ReadingOutcome outcome, String message, List<String> choices) {
        return new Reading(typed, outcome, null, null, null, message, choices);
    }

    /** Whether there is a number to judge. */
    public boolean ok() {
        return outcome == ReadingOutcome.OK;
    }

    /** The unit that was typed, if any. */
    public Optional<Unit> typedUnit() {
        return Optional.ofNullable(unit);
    }

    /**
     * What was read, in plain notation: "1200", "1 1/2 in (38.1 mm)". The metric equivalent follows when another unit or
     * a fraction was typed, with "about" when six significant figures do not hold it. Empty when nothing was read.
     */
    public String echo(DecimalMark mark) {
        return ok() ? new Echo(mark).of(this) : "";
    }
}
