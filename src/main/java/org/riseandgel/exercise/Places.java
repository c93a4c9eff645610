package org.riseandgel.exercise;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.IntFunction;

/** The letters and numbers by which a page names what it shows, and the answers made of them. */
final class Places {
    private Places() {}

    /** The letter of a place counted from 0: a, b, c … */
    static String letter(int place) {
        return String.valueOf((char) ('a' + place));
    }

    /** The number of a place counted from 0: 1, 2, 3 … */
    static String number(int place) {
        return String.valueOf(place + 1);
    }

    /** The place, from 0, of a letter or a number; −1 when it is neither. */
    static int place(String mark) {
        if (mark.length() == 1 && mark.charAt(0) >= 'a' && mark.charAt(0) <= 'z') {
            return mark.charAt(0) - 'a';
        }
        boolean number = !mark.isEmpty() && mark.length() <= 2 && mark.chars().allMatch(c -> c >= '0' && c <= '9');
        return number ? Integer.parseInt(mark) - 1 : -1;
    }

    /** What stands in an answer, one after the other. */
    static List<String> of(String typed) {
        return Arrays.stream(typed.replace(',', ' ').strip().split(" +"))
                .filter(one -> !one.isEmpty())
                .toList();
    }

    /** What is chosen for a row counted from 0, written bare ("c") or with the row's number before it ("2c"). */
    static Optional<String> entry(List<String> chosen, int row) {
        if (row < 0 || row >= chosen.size()) {
            return Optional.empty();
        }
        String mark = number(row);
        String one = chosen.get(row);
        boolean led = one.length() > mark.length() && one.startsWith(mark) && place(one.substring(mark.length())) >= 0;
        boolean letterFollows = led && !Character.isDigit(one.charAt(mark.length()));
        return Optional.of(letterFollows ? one.substring(mark.length()) : one).filter(entry -> place(entry) >= 0);
    }

    /** An answer made of one piece for each place. */
    static String join(int count, IntFunction<String> piece) {
        StringJoiner all = new StringJoiner(" ");
        for (int i = 0; i < count; i++) {
            all.add(piece.apply(i));
        }
        return all.toString();
    }
}
