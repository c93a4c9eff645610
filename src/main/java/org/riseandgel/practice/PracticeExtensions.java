package org.riseandgel.practice;

import io.quarkus.arc.Arc;
import io.quarkus.qute.TemplateExtension;
import java.time.Instant;
import java.util.List;
import org.riseandgel.platform.time.SchoolTime;

/** How practice and its results are written on pages. */
@TemplateExtension
final class PracticeExtensions {
    private static final int SHORT = 90;

    private PracticeExtensions() {}

    /** A level in words. */
    static String levelWords(Integer level) {
        return switch (level) {
            case 1 -> "step by step";
            case 2 -> "on your own";
            default -> "a whole job";
        };
    }

    /** The lines of a text, each of which is a paragraph. */
    static List<String> paragraphs(String text) {
        return text.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
    }

    /** The beginning of a long text, cut between words. */
    static String shortened(String text) {
        String line = text.strip();
        if (line.length() <= SHORT) {
            return line;
        }
        int end = line.lastIndexOf(' ', SHORT);
        return line.substring(0, end < 1 ? SHORT : end) + " …";
    }

    /** A moment as the school's calendar and clock say it; empty when there is none. */
    static String inSchoolTime(Instant moment) {
        return moment == null
                ? ""
                : Arc.container().instance(SchoolTime.class).get().dateAndTime(moment);
    }

    /** The day of a moment; empty when there is none. */
    static String onSchoolDay(Instant moment) {
        return moment == null
                ? ""
                : Arc.container().instance(SchoolTime.class).get().date(moment);
    }
}
