package org.riseandgel.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the passages of lessons in which all words of a question occur. A word is found where one begins with it, in
 * small letters and without accents. All it does is to walk along the words once, so no question can take long.
 */
public final class LessonSearch {
    private static final int MOST_WORDS = 8;
    private static final int MOST_FOUND = 30;
    private static final int OF_ONE_LESSON = 3;
    private static final int IN_TITLE = 8;
    private static final int IN_HEADING = 4;
    private static final int MOST_IN_TEXT = 3;

    private final List<Entry> entries;

    private LessonSearch(List<Entry> entries) {
        this.entries = List.copyOf(entries);
    }

    /** A passage with its words, worked out once. */
    private record Entry(
            Lesson lesson, Passage passage, List<WordRun> title, List<WordRun> heading, List<WordRun> text) {
        static Entry of(Lesson lesson, Passage passage) {
            return new Entry(
                    lesson,
                    passage,
                    WordRun.of(lesson.title()),
                    WordRun.of(passage.heading()),
                    WordRun.of(passage.text()));
        }
    }

    /**
     * A passage that was found.
     *
     * @param heading its heading; empty at the beginning of a lesson
     * @param excerpt some of its text, in pieces
     */
    public record Found(String lesson, String heading, String address, List<Piece> excerpt) {}

    /** A piece of an excerpt, and whether it is a word that was asked for. */
    public record Piece(String text, boolean asked) {}

    private record Scored(Entry entry, int score) {}

    static LessonSearch of(Map<LessonKey, Lesson> lessons) {
        List<Entry> entries = new ArrayList<>();
        for (Lesson lesson : lessons.values()) {
            for (Passage passage : lesson.body().passages()) {
                entries.add(Entry.of(lesson, withObjectives(passage, lesson)));
            }
        }
        return new LessonSearch(entries);
    }

    /** What a lesson is for stands at its beginning. */
    private static Passage withObjectives(Passage passage, Lesson lesson) {
        return passage.anchor().isEmpty()
                ? new Passage("", "", String.join(". ", lesson.objectives()) + ". " + passage.text())
                : passage;
    }

    /** The passages that fit best, the best first; none when nothing is asked. */
    List<Found> find(String question) {
        List<String> asked = words(question);
        List<Scored> scored = new ArrayList<>();
        for (Entry entry : asked.isEmpty() ? List.<Entry>of() : entries) {
            score(entry, asked).ifPresent(score -> scored.add(new Scored(entry, score)));
        }
        scored.sort(Comparator.comparing(Scored::score).reversed());
        List<Found> found = new ArrayList<>();
        for (Scored one : scored) {
            long before = found.stream()
                    .filter(other -> other.lesson().equals(one.entry.lesson().title()))
                    .count();
            if (before < OF_ONE_LESSON && found.size() < MOST_FOUND) {
                found.add(found(one.entry, asked));
            }
        }
        return found;
    }

    /** The words that are looked for, in the order in which they were asked. */
    static List<String> words(String question) {
        return WordRun.of(question).stream()
                .map(WordRun::folded)
                .distinct()
                .limit(MOST_WORDS)
                .toList();
    }

    /** Empty when a word does not occur in the passage, unless it is in the title of its lesson. */
    private static Optional<Integer> score(Entry entry, List<String> asked) {
        int score = 0;
        boolean onlyTitle = true;
        for (String word : asked) {
            int inTitle = hits(entry.title, word) > 0 ? IN_TITLE : 0;
            int inHeading = hits(entry.heading, word) > 0 ? IN_HEADING : 0;
            int inText = Math.min(MOST_IN_TEXT, hits(entry.text, word));
            if (inTitle + inHeading + inText == 0) {
                return Optional.empty();
            }
            onlyTitle &= inHeading + inText == 0;
            score += inTitle + inHeading + inText;
        }
        // A title alone leads to the beginning of its lesson, not to each of its passages.
        return onlyTitle && !entry.passage.anchor().isEmpty() ? Optional.empty() : Optional.of(score);
    }

    private static int hits(List<WordRun> words, String asked) {
        return (int)
                words.stream().filter(word -> word.folded().startsWith(asked)).count();
    }

    private static Found found(Entry entry, List<String> asked) {
        String anchor = entry.passage.anchor();
        return new Found(
                entry.lesson.title(),
                entry.passage.heading(),
                entry.lesson.key().address() + (anchor.isEmpty() ? "" : "#" + anchor),
                Excerpt.of(entry.passage.text(), entry.text, asked));
    }
}
