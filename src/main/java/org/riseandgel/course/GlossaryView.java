package org.riseandgel.course;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The glossary as its page shows it: one group for each letter. */
public record GlossaryView(List<Letter> letters) {

    /** The words that begin with a letter. */
    public record Letter(String letter, List<Line> words) {}

    /**
     * A word.
     *
     * @param also other ways to write it, with commas between them; empty when there are none
     * @param explainedIn the lesson that explains it; null when none is named
     * @param usedIn the other lessons that use it
     */
    public record Line(
            String anchor, String word, String also, String means, Reference explainedIn, List<Reference> usedIn) {}

    /** A lesson to go to. */
    public record Reference(String title, String address) {
        static Reference to(Lesson lesson) {
            return new Reference(lesson.title(), lesson.key().address());
        }
    }

    static GlossaryView of(Content content) {
        Map<String, List<Line>> byLetter = new LinkedHashMap<>();
        for (Term term : content.glossary().terms()) {
            String letter = WordRun.phrase(term.term()).substring(0, 1).toUpperCase(Locale.ROOT);
            byLetter.computeIfAbsent(letter, known -> new ArrayList<>()).add(line(term, content));
        }
        return new GlossaryView(byLetter.entrySet().stream()
                .map(letter -> new Letter(letter.getKey(), letter.getValue()))
                .toList());
    }

    private static Line line(Term term, Content content) {
        List<Reference> uses = content.lessons().values().stream()
                .filter(lesson -> lesson.body().terms().contains(term))
                .filter(lesson -> !term.lesson().filter(lesson.key()::equals).isPresent())
                .map(Reference::to)
                .toList();
        Reference explained =
                term.lesson().map(content.lessons()::get).map(Reference::to).orElse(null);
        return new Line(term.anchor(), term.term(), String.join(", ", term.also()), term.means(), explained, uses);
    }
}
