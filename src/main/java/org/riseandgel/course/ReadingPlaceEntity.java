package org.riseandgel.course;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;

/** How far a person has read in a lesson: moved on, never taken away. */
@Entity
@Table(name = "reading_place")
@IdClass(ReadingPlaceEntity.Key.class)
class ReadingPlaceEntity {
    @Id
    private UUID personId;

    @Id
    private String lessonId;

    private String anchor;

    private Instant keptAt;

    protected ReadingPlaceEntity() {}

    record Key(UUID personId, String lessonId) {}

    String lessonId() {
        return lessonId;
    }

    String anchor() {
        return anchor;
    }
}
