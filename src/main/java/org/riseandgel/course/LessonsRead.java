package org.riseandgel.course;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Set;
import java.util.UUID;

/** Which lessons a person has marked as read. */
@ApplicationScoped
public class LessonsRead {
    private final LessonReadRepository table;
    private final Clock clock;

    LessonsRead(LessonReadRepository table, Clock clock) {
        this.table = table;
        this.clock = clock;
    }

    /** The ids ({@link LessonKey#id()}) of all lessons that the person has read. */
    public Set<String> by(UUID person) {
        return Set.copyOf(table.lessonsOf(person));
    }

    /** Notes that the person has read the lesson; the first time counts. */
    @Transactional
    public void note(UUID person, LessonKey lesson) {
        table.add(person, lesson.id(), clock.instant());
    }
}
