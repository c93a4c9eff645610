package org.riseandgel.course;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** That a person has read a lesson, and when first: added once, never changed. */
@Entity
@Table(name = "lesson_read")
@IdClass(LessonReadEntity.Key.class)
@Immutable
class LessonReadEntity {
    @Id
    private UUID personId;

    @Id
    private String lessonId;

    private Instant readAt;

    protected LessonReadEntity() {}

    record Key(UUID personId, String lessonId) {}
}
