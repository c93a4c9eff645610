package org.riseandgel.account.password;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How much of a password others could foresee. Works on letters and digits alone, in small letters. */
final class GuessableText {
    private static final List<String> KEYBOARD = List.of(
            "1234567890",
            "qwertyuiopasdfghjklzxcvbnm",
            "qwertzuiopasdfghjklyxcvbnm",
            "azertyuiopqsdfghjklmwxcvbn",
            "qazwsxedcrfvtgbyhnujmikolp",
            "1q2w3e4r5t6y7u8i9o0p",
            "1qaz2wsx3edc4rfv5tgb6yhn7ujm8ik9ol0p");
    private static final int FEWEST_LEFT = 6;
    private static final int SHORTEST_PART = 4;
    private static final Set<String> LISTED = read();
    private static final List<String> PARTS =
            LISTED.stream().filter(word -> word.length() >= SHORTEST_PART).toList();

    private GuessableText() {}

    /** The letters and digits alone, small, without accents, and with the usual digits read as letters no longer. */
    static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFKD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]", "");
    }

    /** Whether the text is one short piece over and over. */
    static boolean isRepeated(String plain) {
        for (int piece = 1; piece <= plain.length() / 2; piece++) {
            if (plain.startsWith(plain.substring(piece))) {
                return true;
            }
        }
        return false;
    }

    /** How many characters do not follow from the one before by the alphabet, the digits or the keyboard. */
    static int unforeseen(String plain) {
        int count = Math.min(1, plain.length());
        for (int i = 1; i < plain.length(); i++) {
            if (!follows(plain.charAt(i - 1), plain.charAt(i))) {
                count++;
            }
        }
        return count;
    }

    /** The text with all given words taken out, longest first, and digits too, since digits are what people append. */
    static String without(String plain, Stream<String> words) {
        String left = plain;
        for (String word :
                words.sorted(Comparator.comparing(String::length).reversed()).toList()) {
            left = left.replace(word, "");
        }
        return left.replaceAll("\\p{N}", "");
    }

    /** Whether the text is on the list, or little more than words of the list put together. */
    static boolean isListed(String plain) {
        String letters = asLetters(plain);
        return LISTED.contains(plain)
                || LISTED.contains(letters)
                || without(plain, PARTS.stream()).length() < FEWEST_LEFT
                || without(letters, PARTS.stream()).length() < FEWEST_LEFT;
    }

    private static String asLetters(String plain) {
        return plain.replace('0', 'o')
                .replace('1', 'i')
                .replace('3', 'e')
                .replace('4', 'a')
                .replace('5', 's')
                .replace('7', 't');
    }

    private static boolean follows(char before, char after) {
        return Math.abs(after - before) <= 1 || KEYBOARD.stream().anyMatch(row -> areNeighbours(row, before, after));
    }

    private static boolean areNeighbours(String row, char before, char after) {
        int first = row.indexOf(before);
        int second = row.indexOf(after);
        return first >= 0 && second >= 0 && Math.abs(first - second) == 1;
    }

    private static Set<String> read() {
        try (InputStream in = GuessableText.class.getResourceAsStream("/security/refused-passwords.txt");
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(GuessableText::plain)
                    .filter(line -> !line.isEmpty())
                    .collect(Collectors.toUnmodifiableSet());
        } catch (IOException e) {
            throw new UncheckedIOException("The list of refused passwords cannot be read", e);
        }
    }
}
