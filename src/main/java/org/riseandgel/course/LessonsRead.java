package org.riseandgel.course;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.platform.sql.Sql;

/** Which lessons a person has marked as read. */
@ApplicationScoped
public class LessonsRead {
    private final Sql sql;
    private final Clock clock;

    LessonsRead(Sql sql, Clock clock) {
        this.sql = sql;
        this.clock = clock;
    }

    /** The ids ({@link LessonKey#id()}) of all lessons that the person has read. */
    public Set<String> by(UUID person) {
        return sql
                .list("SELECT lesson_id FROM lesson_read WHERE person_id = ?", row -> row.text("lesson_id"), person)
                .stream()
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Notes that the person has read the lesson; the first time counts. */
    @Transactional
    public void note(UUID person, LessonKey lesson) {
        sql.change(
                "INSERT INTO lesson_read (person_id, lesson_id, read_at) VALUES (?, ?, ?) ON CONFLICT DO NOTHING",
                person,
                lesson.id(),
                clock.instant());
    }
}
