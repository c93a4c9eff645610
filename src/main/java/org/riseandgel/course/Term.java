package org.riseandgel.course;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A word of the trade, explained.
 *
 * @param also other ways to write it, such as the plural
 * @param means what it means, in one or two sentences
 * @param lesson the lesson that explains it, if one does
 */
record Term(String term, List<String> also, String means, Optional<LessonKey> lesson) {
    Term {
        also = List.copyOf(also);
    }

    /** Where it stands on the page of the glossary. */
    String anchor() {
        return "term-" + WordRun.phrase(term).replace(' ', '-');
    }

    /** The address of its explanation. */
    String address() {
        return Glossary.ADDRESS + "#" + anchor();
    }

    /** All ways to write it, as they are compared. */
    List<String> phrases() {
        return Stream.concat(Stream.of(term), also.stream())
                .map(WordRun::phrase)
                .toList();
    }
}
