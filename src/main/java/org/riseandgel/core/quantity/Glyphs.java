package org.riseandgel.core.quantity;

import java.util.HashMap;
import java.util.Map;

/**
 * One spelling for each sign: spaces, minus signs, slashes, marks and units that look alike become one character each.
 *
 * <p>The table is fixed and our own. Unicode's compatibility forms would turn 1½ into 11/2 and 10³ into 103.
 */
final class Glyphs {
    private static final String EDGE_ONLY = "\t\n\u000B\f\r\u0085\u2028\u2029\u200B\u200C\u200D\u2060\uFEFF";
    private static final Map<Character, String> TABLE = table();

    private Glyphs() {}

    /** The text in our spelling, without spaces and zero-width characters at its ends. */
    static String plain(String typed) {
        int start = 0;
        int end = typed.length();
        while (start < end && isEdge(typed.charAt(start))) {
            start++;
        }
        while (end > start && isEdge(typed.charAt(end - 1))) {
            end--;
        }
        StringBuilder plain = new StringBuilder(end - start + 4);
        for (int at = start; at < end; at++) {
            append(plain, typed.charAt(at));
        }
        return plain.toString();
    }

    private static void append(StringBuilder plain, char sign) {
        if (sign > ' ' && sign < 0x7F) {
            plain.append(sign);
        } else if (isInvisible(sign)) {
            throw Refused.malformed(
                    "There is an invisible character in the number. Type it again by hand, like 12{mark}5.");
        } else if (sign >= '！' && sign <= '～') {
            plain.append((char) (sign - '！' + '!'));
        } else {
            plain.append(TABLE.getOrDefault(sign, String.valueOf(sign)));
        }
    }

    private static boolean isEdge(char sign) {
        return sign == ' ' || " ".equals(TABLE.get(sign)) || EDGE_ONLY.indexOf(sign) >= 0;
    }

    private static boolean isInvisible(char sign) {
        return sign < ' '
                || sign >= 0x7F && sign <= 0x9F
                || "\u00AD\u061C\u180E\uFEFF".indexOf(sign) >= 0
                || sign >= 0x200B && sign <= 0x200F
                || sign >= 0x2028 && sign <= 0x202E
                || sign >= 0x2060 && sign <= 0x206F
                || sign >= 0xFFF9 && sign <= 0xFFFB;
    }

    private static Map<Character, String> table() {
        Map<Character, String> table = new HashMap<>();
        put(table, " ", "\u00A0\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200A\u202F\u205F\u3000");
        put(table, "-", "\u2010\u2011\u2012\u2013\u2212\uFE63");
        put(table, "'", "\u2018\u2019\u02BC\u00B4");
        put(table, "′", "\u2032\u02B9");
        put(table, "\"", "\u2033\u201C\u201D\u201F\u02BA\u3003");
        put(table, "/", "\u2044\u2215");
        put(table, "·", "\u22C5\u2219\u2022");
        put(table, "*", "\u2217");
        put(table, "°", "\u00BA\u02DA");
        put(table, "µ", "\u03BC");
        put(table, ":", "\u2236");
        put(table, "K", "\u212A");
        put(table, "L", "\u2113");
        put(table, "°C", "\u2103");
        put(table, "°F", "\u2109");
        put(table, "mg", "\u338E");
        put(table, "kg", "\u338F");
        put(table, "mm", "\u339C");
        put(table, "cm", "\u339D");
        put(table, "mL", "\u3396");
        put(table, "cc", "\u33C4");
        return Map.copyOf(table);
    }

    private static void put(Map<Character, String> table, String plain, String lookAlikes) {
        for (char sign : lookAlikes.toCharArray()) {
            table.put(sign, plain);
        }
    }
}
