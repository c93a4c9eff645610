package org.riseandgel.progress;

import io.quarkus.qute.TemplateExtension;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How progress is written on pages. */
@TemplateExtension
final class ProgressExtensions {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private ProgressExtensions() {}

    /** A day of the school's calendar, such as 3 May 2027. */
    static String dayWords(LocalDate day) {
        return DAY.format(day);
    }
}
