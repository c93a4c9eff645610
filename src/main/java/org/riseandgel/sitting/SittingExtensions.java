package org.riseandgel.sitting;

import io.quarkus.qute.TemplateExtension;
import java.time.Duration;

/** How sittings are written on pages. */
@TemplateExtension
final class SittingExtensions {
    private SittingExtensions() {}

    /** A span of time in the two largest units that fit: "42 min", "3 h 5 min", "1 d 2 h". */
    static String inWords(Duration time) {
        if (time.toDays() > 0) {
            return "%d d %d h".formatted(time.toDays(), time.toHoursPart());
        }
        if (time.toHours() > 0) {
            return "%d h %d min".formatted(time.toHours(), time.toMinutesPart());
        }
        return time.toMinutes() > 0 ? "%d min".formatted(time.toMinutes()) : "less than a minute";
    }
}
