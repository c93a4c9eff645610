package org.riseandgel.course;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.riseandgel.exercise.Problems;

/** Reads {@code lessons/glossary.yaml}: the words of the trade in the order of the alphabet. */
final class GlossaryReader {
    static final String FILE = "lessons/glossary.yaml";
    private static final int LONGEST_MEANING = 400;

    private final Map<LessonKey, Lesson> lessons;
    private final Map<String, String> taken = new HashMap<>();
    private final List<Term> terms = new ArrayList<>();

    private GlossaryReader(Map<LessonKey, Lesson> lessons) {
        this.lessons = lessons;
    }

    static Glossary read(String text, Map<LessonKey, Lesson> lessons, Problems problems) {
        return Fields.read(text, 0, "glossary.yaml", problems)
                .map(new GlossaryReader(lessons)::glossary)
                .orElse(Glossary.EMPTY);
    }

    private Glossary glossary(Fields fields) {
        fields.groups("terms").forEach(this::term);
        fields.noOthers();
        return new Glossary(terms);
    }

    private void term(Fields fields) {
        String name = fields.text("term");
        List<String> also = fields.isMissing("also")
                ? List.of()
                : fields.texts("also").stream().map(Fields.Line::text).toList();
        String means = fields.text("means");
        if (means.length() > LONGEST_MEANING) {
            fields.problem("means", "has %d characters, at most %d".formatted(means.length(), LONGEST_MEANING));
        }
        Term term = new Term(name, also, means, lesson(fields));
        fields.noOthers();
        if (WordRun.phrase(name).isEmpty()) {
            return;
        }
        check(fields, term);
        terms.add(term);
    }

    private void check(Fields fields, Term term) {
        if (!terms.isEmpty()) {
            String before = terms.get(terms.size() - 1).term();
            if (WordRun.phrase(before).compareTo(WordRun.phrase(term.term())) > 0) {
                fields.problem(
                        "term",
                        "“%s” stands after “%s”; sort the words by the alphabet".formatted(term.term(), before));
            }
        }
        for (String phrase : term.phrases()) {
            String other = taken.putIfAbsent(phrase, term.term());
            if (other != null) {
                fields.problem(
                        "term", "“%s” is explained under “%s” already; explain it once".formatted(phrase, other));
            }
        }
    }

    private Optional<LessonKey> lesson(Fields fields) {
        Optional<String> written = fields.optional("lesson");
        Optional<LessonKey> found = written.flatMap(name ->
                lessons.keySet().stream().filter(key -> key.id().equals(name)).findFirst());
        if (written.isPresent() && found.isEmpty()) {
            fields.problem(
                    "lesson",
                    "names “%s”, which is no lesson; write <stage>/<lesson> as their files are named"
                            .formatted(written.get()));
        }
        return found;
    }
}
