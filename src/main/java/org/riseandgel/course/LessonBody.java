package org.riseandgel.course;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.commonmark.node.Node;
import org.riseandgel.bench.Calculation;
import org.riseandgel.core.quantity.DecimalMark;

/**
 * The text of a lesson, read and checked. It is written as HTML when it is first shown with a decimal mark, worked
 * examples and all, and kept for as long as this content is current.
 */
public final class LessonBody {
    private final Node document;
    private final Map<Node, Heading> headings;
    private final List<Worked> worked;
    private final Map<DecimalMark, Written> written = new EnumMap<>(DecimalMark.class);
    private Set<Term> terms = Set.of();

    LessonBody(Node document, Map<Node, Heading> headings, List<Worked> worked) {
        this.document = document;
        this.headings = headings;
        this.worked = List.copyOf(worked);
    }

    /** What was written last with one decimal mark, and whom it says to call. */
    private record Written(String emergency, String html) {}

    /** The text as HTML, with nobody named to call in an emergency. */
    public String html(DecimalMark mark) {
        return html(mark, "");
    }

    /**
     * The text as HTML that holds nothing but what the lesson format allows.
     *
     * @param emergency whom this school calls in an emergency, in its own words; where it is empty the text says so
     */
    public String html(DecimalMark mark, String emergency) {
        synchronized (written) {
            return written.compute(
                            mark,
                            (asked, last) -> last != null && last.emergency.equals(emergency)
                                    ? last
                                    : new Written(
                                            emergency, new BodyWriter(headings, asked, emergency).write(document)))
                    .html;
        }
    }

    /** The headings, in the order of the text. */
    public List<Heading> headings() {
        return List.copyOf(headings.values());
    }

    /** The calculations that the worked examples use, each once. */
    public List<Calculation> calculations() {
        return worked.stream().map(Worked::calculation).distinct().toList();
    }

    List<Worked> worked() {
        return worked;
    }

    /** Links the words of the glossary that the text uses; to be called once, while the course is loaded. */
    void explain(Glossary glossary) {
        terms = TermLinks.put(document, glossary);
    }

    /** The words of the glossary that the text uses. */
    Set<Term> terms() {
        return terms;
    }

    /** The text in plain words, one passage for each heading and one for what stands before the first. */
    List<Passage> passages() {
        return PassageReader.read(document, headings);
    }
}
