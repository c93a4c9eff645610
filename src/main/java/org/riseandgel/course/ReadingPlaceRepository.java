package org.riseandgel.course;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The table of how far people have read. */
@ApplicationScoped
class ReadingPlaceRepository implements PanacheRepositoryBase<ReadingPlaceEntity, ReadingPlaceEntity.Key> {
    Optional<ReadingPlaceEntity> of(UUID person, String lesson) {
        return findByIdOptional(new ReadingPlaceEntity.Key(person, lesson));
    }

    /** A person's places in lessons that they have not marked as read, the latest first. */
    List<ReadingPlaceEntity> unread(UUID person) {
        return list(
                "from ReadingPlaceEntity p where p.personId = ?1 and not exists (select 1 from LessonReadEntity r"
                        + " where r.personId = ?1 and r.lessonId = p.lessonId) order by p.keptAt desc, p.lessonId",
                person);
    }

    /** One row for a person and lesson; the database decides, so that two pages at once leave one. */
    void keep(UUID person, String lesson, String anchor, Instant now) {
        getEntityManager()
                .createQuery("insert into ReadingPlaceEntity (personId, lessonId, anchor, keptAt)"
                        + " values (?1, ?2, ?3, ?4) on conflict (personId, lessonId)"
                        + " do update set anchor = excluded.anchor, keptAt = excluded.keptAt")
                .setParameter(1, person)
                .setParameter(2, lesson)
                .setParameter(3, anchor)
                .setParameter(4, now)
                .executeUpdate();
    }
}
