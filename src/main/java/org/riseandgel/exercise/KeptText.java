package org.riseandgel.exercise;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The text that is kept of an exercise: its file and, after it, each figure that it shows, so that an old draw looks as it
 * did. A figure begins after a line that no exercise file may contain, because there it would begin a second document.
 */
record KeptText(String file, Map<String, String> figures) {
    private static final String MARK = "\n--- figure ";

    /** Takes a kept text apart. */
    static KeptText split(String text) {
        Map<String, String> figures = new LinkedHashMap<>();
        int end = text.indexOf(MARK);
        String file = end < 0 ? text : text.substring(0, end);
        while (end >= 0) {
            int name = end + MARK.length();
            int line = text.indexOf('\n', name);
            int next = text.indexOf(MARK, line);
            figures.put(text.substring(name, line), text.substring(line + 1, next < 0 ? text.length() : next));
            end = next;
        }
        return new KeptText(file, figures);
    }

    /** The one text; an exercise without figures is just its file. */
    String joined() {
        StringBuilder text = new StringBuilder(file);
        figures.forEach(
                (name, figure) -> text.append(MARK).append(name).append('\n').append(figure));
        return text.toString();
    }
}
