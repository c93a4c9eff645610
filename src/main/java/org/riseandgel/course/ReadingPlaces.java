package org.riseandgel.course;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;

/** Remembers how far a person has read, so that they can go on there. */
@ApplicationScoped
public class ReadingPlaces {
    private final ReadingPlaceRepository table;
    private final CourseContent content;
    private final Clock clock;

    ReadingPlaces(ReadingPlaceRepository table, CourseContent content, Clock clock) {
        this.table = table;
        this.content = content;
        this.clock = clock;
    }

    /** A place to go on from: its lesson, the words of its heading, and its address. */
    public record Place(String lesson, String heading, String address) {}

    /** Where the person stopped in this lesson, while that part is still in it. */
    public Optional<Place> in(UUID person, Lesson lesson) {
        return table.of(person, lesson.key().id()).flatMap(kept -> place(lesson, kept.anchor()));
    }

    /** Where the person read last, unless they have marked that lesson as read. */
    public Optional<Place> last(UUID person) {
        Content now = content.current();
        return table.unread(person).stream()
                .flatMap(kept -> now.lessons().values().stream()
                        .filter(lesson -> lesson.key().id().equals(kept.lessonId()))
                        .flatMap(lesson -> place(lesson, kept.anchor()).stream()))
                .findFirst();
    }

    /**
     * Keeps a place.
     *
     * @return the place; empty, with nothing kept, when the lesson has no such part
     */
    @Transactional
    public Optional<Place> keep(UUID person, Lesson lesson, String anchor) {
        Optional<Place> place = place(lesson, anchor);
        place.ifPresent(known -> table.keep(person, lesson.key().id(), anchor, clock.instant()));
        return place;
    }

    private static Optional<Place> place(Lesson lesson, String anchor) {
        return lesson.body().headings().stream()
                .filter(heading -> heading.anchor().equals(anchor))
                .findFirst()
                .map(heading ->
                        new Place(lesson.title(), heading.words(), lesson.key().address() + "#" + anchor));
    }
}
