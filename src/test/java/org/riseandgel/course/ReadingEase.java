package org.riseandgel.course;

import java.util.List;
import java.util.Locale;

/**
 * How easily a text reads: 206.835 − 1.015 · words ÷ sentences − 84.6 · syllables ÷ words. Source: R. Flesch, "A new
 * readability yardstick", Journal of Applied Psychology 32, 1948. 60 to 70 is plain English (the same, from memory).
 *
 * <p>Syllables are groups of vowels, without an e at the end of a word that is not its only vowel; that is a common way
 * to count and errs by a few in a hundred (from memory).
 */
record ReadingEase(int words, int sentences, int syllables) {
    private static final String VOWELS = "aeiouy";

    static ReadingEase of(Lesson lesson) {
        int words = 0;
        int sentences = 0;
        int syllables = 0;
        for (Passage passage : lesson.body().passages()) {
            ReadingEase part = of(passage.text());
            words += part.words;
            sentences += part.sentences;
            syllables += part.syllables;
        }
        return new ReadingEase(words, sentences, syllables);
    }

    static ReadingEase of(String text) {
        List<WordRun> words = WordRun.of(text);
        int ends = 0;
        for (int i = 0; i < words.size(); i++) {
            int next = i + 1 < words.size() ? words.get(i + 1).from() : text.length();
            String between = text.substring(words.get(i).to(), next);
            boolean mark = between.indexOf('.') >= 0
                    || between.indexOf('?') >= 0
                    || between.indexOf('!') >= 0
                    || between.indexOf(':') >= 0;
            // "3.5" is one number, and "e.g." no end: a sentence ends before a blank or the end.
            boolean blank = between.chars().anyMatch(Character::isWhitespace) || next == text.length();
            ends += mark && blank ? 1 : 0;
        }
        int syllables =
                words.stream().mapToInt(word -> syllables(word.folded())).sum();
        return new ReadingEase(words.size(), Math.max(1, ends), syllables);
    }

    static int syllables(String word) {
        String small = word.toLowerCase(Locale.ROOT);
        int groups = 0;
        boolean inside = false;
        for (char letter : small.toCharArray()) {
            boolean vowel = VOWELS.indexOf(letter) >= 0;
            groups += vowel && !inside ? 1 : 0;
            inside = vowel;
        }
        boolean silent = groups > 1 && small.endsWith("e") && !small.endsWith("le");
        return Math.max(1, silent ? groups - 1 : groups);
    }

    double score() {
        return 206.835 - 1.015 * words / sentences - 84.6 * syllables / words;
    }
}
