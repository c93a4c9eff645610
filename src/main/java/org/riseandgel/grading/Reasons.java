package org.riseandgel.grading;

import java.util.List;
import org.riseandgel.platform.web.PlainText;
import org.riseandgel.platform.web.Problem;

/** Reasons that people give for what they do to marks and sets; the apprentice can read them. */
final class Reasons {
    private static final int SHORTEST = 3;
    private static final int LONGEST = 500;

    private Reasons() {}

    static List<Problem> problems(String field, String typed) {
        String reason = typed.strip();
        if (reason.length() < SHORTEST) {
            return List.of(new Problem(field, "Write in a sentence why. The apprentice can read it."));
        }
        if (!PlainText.isPlain(reason)) {
            return List.of(new Problem(field, PlainText.INVISIBLE));
        }
        return reason.length() > LONGEST
                ? List.of(
                        new Problem(field, "The reason has %d characters; at most 500 fit.".formatted(reason.length())))
                : List.of();
    }
}
