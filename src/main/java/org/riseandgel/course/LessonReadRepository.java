package org.riseandgel.course;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** The table of lessons that were read. */
@ApplicationScoped
class LessonReadRepository implements PanacheRepositoryBase<LessonReadEntity, LessonReadEntity.Key> {
    List<String> lessonsOf(UUID person) {
        return getEntityManager()
                .createQuery("select lessonId from LessonReadEntity where personId = ?1", String.class)
                .setParameter(1, person)
                .getResultList();
    }

    /** Adds a row unless there is one; the database decides, so that two presses at once are one. */
    void add(UUID person, String lesson, Instant now) {
        getEntityManager()
                .createQuery("insert into LessonReadEntity (personId, lessonId, readAt) values (?1, ?2, ?3)"
                        + " on conflict do nothing")
                .setParameter(1, person)
                .setParameter(2, lesson)
                .setParameter(3, now)
                .executeUpdate();
    }
}
