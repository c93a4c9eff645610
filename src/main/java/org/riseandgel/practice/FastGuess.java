package org.riseandgel.practice;

import java.time.Duration;
import java.util.List;

/**
 * Tells a pattern of fast guesses: three answers in a row, each within three seconds of its question, and not all of them
 * right. Who answers three questions rightly in that time is quick and does not guess.
 */
final class FastGuess {
    private static final int IN_A_ROW = 3;
    private static final Duration FAST = Duration.ofSeconds(3);

    private FastGuess() {}

    /** How long an answer took, and whether it was right. */
    record Pace(Duration took, boolean right) {
        boolean isFast() {
            return took.compareTo(FAST) < 0;
        }
    }

    /** Whether the latest of these answers, newest first, completes the pattern. */
    static boolean isPattern(List<Pace> newestFirst) {
        List<Pace> last = newestFirst.subList(0, Math.min(IN_A_ROW, newestFirst.size()));
        return last.size() == IN_A_ROW
                && last.stream().allMatch(Pace::isFast)
                && !last.stream().allMatch(Pace::right);
    }
}
