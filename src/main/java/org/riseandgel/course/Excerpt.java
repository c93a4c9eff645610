package org.riseandgel.course;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.riseandgel.course.LessonSearch.Piece;

/** Cuts the piece out of a text that shows the words somebody asked for. */
final class Excerpt {
    private static final int WORDS_BEFORE = 8;
    private static final int WORDS_SHOWN = 30;

    private Excerpt() {}

    static List<Piece> of(String text, List<WordRun> words, List<String> asked) {
        int hit = IntStream.range(0, words.size())
                .filter(at -> isAsked(words.get(at), asked))
                .findFirst()
                .orElse(0);
        int first = Math.max(0, hit - WORDS_BEFORE);
        int last = Math.min(words.size(), first + WORDS_SHOWN);
        if (first >= last) {
            return List.of();
        }
        List<Piece> pieces = new ArrayList<>();
        int at = first == 0 ? 0 : words.get(first).from();
        if (first > 0) {
            pieces.add(new Piece("… ", false));
        }
        for (WordRun word : words.subList(first, last)) {
            if (isAsked(word, asked)) {
                pieces.add(new Piece(text.substring(at, word.from()), false));
                pieces.add(new Piece(text.substring(word.from(), word.to()), true));
                at = word.to();
            }
        }
        int end = last == words.size() ? text.length() : words.get(last - 1).to();
        pieces.add(new Piece(text.substring(at, end) + (last < words.size() ? " …" : ""), false));
        return pieces;
    }

    private static boolean isAsked(WordRun word, List<String> asked) {
        return asked.stream().anyMatch(one -> word.folded().startsWith(one));
    }
}
