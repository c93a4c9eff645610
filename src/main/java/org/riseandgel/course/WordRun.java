package org.riseandgel.course;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A word in a text, as it is compared: in small letters and without accents, so that "Mould", "mould" and "Möuld" are one.
 *
 * @param folded the word as it is compared
 * @param from where it begins in the text
 * @param to where it ends
 */
record WordRun(String folded, int from, int to) {

    /** The words of a text: runs of letters, digits and accents. Everything else stands between words. */
    static List<WordRun> of(String text) {
        List<WordRun> words = new ArrayList<>();
        int from = -1;
        for (int at = 0; at <= text.length(); at++) {
            boolean inside = at < text.length() && isPart(text.charAt(at));
            if (inside && from < 0) {
                from = at;
            } else if (!inside && from >= 0) {
                words.add(new WordRun(fold(text.substring(from, at)), from, at));
                from = -1;
            }
        }
        return words;
    }

    /** The words of a text as they are compared, with one space between them. */
    static String phrase(String text) {
        return String.join(" ", of(text).stream().map(WordRun::folded).toList());
    }

    private static boolean isPart(char letter) {
        return Character.isLetterOrDigit(letter)
                || Character.isSurrogate(letter)
                || Character.getType(letter) == Character.NON_SPACING_MARK;
    }

    private static String fold(String word) {
        StringBuilder folded = new StringBuilder(word.length());
        for (char letter : Normalizer.normalize(word, Normalizer.Form.NFKD).toCharArray()) {
            if (Character.getType(letter) != Character.NON_SPACING_MARK) {
                folded.append(letter);
            }
        }
        return folded.toString().toLowerCase(Locale.ROOT);
    }
}
