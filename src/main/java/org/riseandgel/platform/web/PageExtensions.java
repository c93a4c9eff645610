package org.riseandgel.platform.web;

import io.quarkus.qute.TemplateExtension;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** What the page kit's tags ask of the values they are given. */
@TemplateExtension
final class PageExtensions {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private PageExtensions() {}

    /** A day as people write it: 3 May 2026. */
    static String inWords(LocalDate day) {
        return DAY.format(day);
    }

    /** The message for a field, or null; a missing list has no messages. */
    static String messageFor(List<Problem> problems, String field) {
        return problems == null
                ? null
                : problems.stream()
                        .filter(problem -> field.equals(problem.field()))
                        .map(Problem::message)
                        .findFirst()
                        .orElse(null);
    }

    /** The look that goes with a signal word. */
    static String cautionClass(String word) {
        return word.equals("CAUTION") ? "caution-level" : word.toLowerCase(Locale.ROOT);
    }
}
