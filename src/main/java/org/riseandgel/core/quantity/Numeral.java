package org.riseandgel.core.quantity;

import java.util.List;

/**
 * Digits with the separators between them: the groups 1, 234 and 5 with the separators ',' and '.' for 1,234.5.
 *
 * <p>Separators are told apart by shape alone. Only one to three digits, a point or comma and exactly three digits can be
 * either; there the decimal mark of the school decides, and the other mark has to be asked about.
 *
 * @param homeMark whether the decimal mark of the school is among the separators
 * @param start where the numeral begins in the text
 * @param end where it ends
 */
record Numeral(List<String> groups, String separators, boolean homeMark, int start, int end) {
    private static final List<String> JUST_ONE = List.of("1");

    /** Refuses separators that are neither groups of three nor one decimal mark. */
    Numeral {
        groups = List.copyOf(groups);
        int wholeGroups = groups.size() - (lastIsMark(separators) ? 1 : 0);
        if (wholeGroups > 1 && !(sameSeparator(separators, wholeGroups - 1) && threes(groups, wholeGroups))) {
            throw Refused.malformed("The digits of {typed} are not in groups of three."
                    + " Write the number without spaces or marks between its digits, like 1234{mark}5.");
        }
    }

    /** The 1 that is not written before a bare power of ten. */
    static Numeral one() {
        return new Numeral(JUST_ONE, "", false, 0, 0);
    }

    /** Whole digits and nothing else. */
    boolean isPlain() {
        return separators.isEmpty();
    }

    boolean hasMark() {
        return lastIsMark(separators);
    }

    String digits() {
        return String.join("", groups);
    }

    /** Digits after the decimal mark. */
    int places() {
        return hasMark() ? last().length() : 0;
    }

    /** Whether its one mark may separate tenths or thousands, and is not the home mark. */
    boolean isAmbiguous() {
        return groups.size() == 2 && hasMark() && !homeMark && last().length() == 3 && leads(groups.get(0));
    }

    /** The text with this numeral's one mark replaced, so that it can be read one way only. */
    String rewritten(String text, String mark) {
        return text.substring(0, start) + String.join(mark, groups) + text.substring(end);
    }

    private String last() {
        return groups.get(groups.size() - 1);
    }

    private static boolean lastIsMark(String separators) {
        if (separators.isEmpty()) {
            return false;
        }
        char last = separators.charAt(separators.length() - 1);
        return isMark(last) && separators.indexOf(last) == separators.length() - 1;
    }

    private static boolean sameSeparator(String separators, int count) {
        for (int at = 1; at < count; at++) {
            if (separators.charAt(at) != separators.charAt(0)) {
                return false;
            }
        }
        return true;
    }

    private static boolean threes(List<String> groups, int count) {
        for (int at = 1; at < count; at++) {
            if (groups.get(at).length() != 3) {
                return false;
            }
        }
        return leads(groups.get(0));
    }

    private static boolean leads(String group) {
        return group.length() >= 1 && group.length() <= 3 && group.charAt(0) != '0';
    }

    static boolean isMark(char sign) {
        return sign == '.' || sign == ',';
    }
}
