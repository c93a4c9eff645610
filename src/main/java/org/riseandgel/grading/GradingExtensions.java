package org.riseandgel.grading;

import io.quarkus.qute.TemplateExtension;
import java.time.Duration;

/** How graded sets are written on pages. */
@TemplateExtension
final class GradingExtensions {
    private static final int SECONDS = 60;

    private GradingExtensions() {}

    /** A span of time: "48 s", "3 min 5 s", "2 h 10 min". */
    static String spanWords(Duration time) {
        long minutes = time.toMinutes();
        if (minutes < 1) {
            return time.toSeconds() + " s";
        }
        return minutes < SECONDS
                ? minutes + " min " + time.toSecondsPart() + " s"
                : time.toHours() + " h " + time.toMinutesPart() + " min";
    }

    /** "1 point", "5 points". */
    static String pointWords(Integer points) {
        return points + (points == 1 ? " point" : " points");
    }
}
