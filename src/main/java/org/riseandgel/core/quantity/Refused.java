package org.riseandgel.core.quantity;

import java.util.List;

/**
 * Why a text cannot be read; turned into a {@link Reading} by the reader and never seen outside the package.
 *
 * <p>In the message, {typed} stands for the text and {mark} for the decimal mark of the school.
 */
final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final ReadingOutcome outcome;
    private final transient List<String> choices;

    private Refused(ReadingOutcome outcome, String message, List<String> choices) {
        super(message, null, false, false);
        this.outcome = outcome;
        this.choices = choices;
    }

    static Refused as(ReadingOutcome outcome, String message) {
        return new Refused(outcome, message, List.of());
    }

    static Refused malformed(String message) {
        return as(ReadingOutcome.MALFORMED, message);
    }

    static Refused outOfRange(String message) {
        return as(ReadingOutcome.OUT_OF_RANGE, message);
    }

    static Refused ambiguous(String message, List<String> choices) {
        return new Refused(ReadingOutcome.AMBIGUOUS, message, choices);
    }

    Reading reading(String typed, String shown, DecimalMark mark) {
        String message =
                getMessage().replace("{mark}", String.valueOf(mark.mark())).replace("{typed}", "“" + shown + "”");
        return Reading.refused(typed, outcome, message, choices);
    }
}
