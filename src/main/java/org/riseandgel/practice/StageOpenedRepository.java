package org.riseandgel.practice;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** The table of stages that were opened by hand. */
@ApplicationScoped
class StageOpenedRepository implements PanacheRepositoryBase<StageOpenedEntity, StageOpenedEntity.Key> {
    List<StageOpenedEntity> of(UUID person) {
        return list("personId", person);
    }

    /** Adds a row unless there is one, and says whether it did: the database decides between two presses at once. */
    boolean add(UUID person, String stage, UUID by, String reason, Instant now) {
        return getEntityManager()
                        .createQuery("insert into StageOpenedEntity (personId, stage, openedBy, reason, openedAt)"
                                + " values (?1, ?2, ?3, ?4, ?5) on conflict do nothing")
                        .setParameter(1, person)
                        .setParameter(2, stage)
                        .setParameter(3, by)
                        .setParameter(4, reason)
                        .setParameter(5, now)
                        .executeUpdate()
                > 0;
    }
}
