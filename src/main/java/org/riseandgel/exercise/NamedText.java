package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Text with {@code {name}} where a drawn value belongs. */
final class NamedText {
    private NamedText() {}

    /** The text with every name replaced. */
    static String fill(String text, UnaryOperator<String> valueOf) {
        StringBuilder filled = new StringBuilder();
        int from = 0;
        for (int open = text.indexOf('{'); open >= 0; open = text.indexOf('{', from)) {
            int close = text.indexOf('}', open);
            filled.append(text, from, open).append(valueOf.apply(text.substring(open + 1, close)));
            from = close + 1;
        }
        return filled.append(text.substring(from)).toString();
    }

    /** The names in the text, in order. */
    static List<String> names(String text) {
        List<String> names = new ArrayList<>();
        fill(text, name -> {
            names.add(name);
            return "";
        });
        return names;
    }

    /** Whether every brace that opens is closed before the next one opens, and none closes that was not opened. */
    static boolean isBalanced(String text) {
        boolean open = false;
        for (char c : text.toCharArray()) {
            if (c == '{' && open || c == '}' && !open) {
                return false;
            }
            open = c == '{' || open && c != '}';
        }
        return !open;
    }
}
