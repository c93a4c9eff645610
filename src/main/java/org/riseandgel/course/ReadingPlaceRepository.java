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

    /** A person's places, the latest first. */
    List<ReadingPlaceEntity> of(UUID person) {
        return list("personId = ?1 order by keptAt desc, lessonId", person);
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
