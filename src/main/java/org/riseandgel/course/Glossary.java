package org.riseandgel.course;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The words of the trade that the lessons use, in the order of the alphabet. */
public final class Glossary {
    static final String ADDRESS = "/course/glossary";
    static final Glossary EMPTY = new Glossary(List.of());

    private final List<Term> terms;
    private final Map<String, Term> byPhrase = new HashMap<>();
    private final int longest;

    Glossary(List<Term> terms) {
        this.terms = List.copyOf(terms);
        for (Term term : terms) {
            term.phrases().forEach(phrase -> byPhrase.putIfAbsent(phrase, term));
        }
        this.longest = byPhrase.keySet().stream()
                .mapToInt(phrase -> phrase.split(" ").length)
                .max()
                .orElse(0);
    }

    List<Term> terms() {
        return terms;
    }

    /** A word of the glossary in a text, and where it stands. */
    record Use(Term term, int from, int to) {}

    /** The longest word of the glossary that begins with a word of a text; words that belong together stand close. */
    Optional<Use> useAt(String text, List<WordRun> words, int first) {
        Optional<Use> found = Optional.empty();
        StringBuilder phrase = new StringBuilder();
        for (int last = first; last < Math.min(words.size(), first + longest); last++) {
            if (last > first) {
                if (!isClose(text, words.get(last - 1).to(), words.get(last).from())) {
                    break;
                }
                phrase.append(' ');
            }
            phrase.append(words.get(last).folded());
            Term term = byPhrase.get(phrase.toString());
            if (term != null) {
                found = Optional.of(
                        new Use(term, words.get(first).from(), words.get(last).to()));
            }
        }
        return found;
    }

    /** Whether only spaces or hyphens stand between two words. */
    private static boolean isClose(String text, int from, int to) {
        return text.substring(from, to)
                .chars()
                .allMatch(c -> Character.isWhitespace(c)
                        || Character.isSpaceChar(c)
                        || Character.getType(c) == Character.DASH_PUNCTUATION);
    }
}
