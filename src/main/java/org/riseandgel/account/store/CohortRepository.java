package org.riseandgel.account.store;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** The table of cohorts. */
@ApplicationScoped
public class CohortRepository implements PanacheRepositoryBase<CohortEntity, UUID> {
    /** The cohort with this name, whatever its capitals. */
    public Optional<CohortEntity> named(String name) {
        return find("lower(name) = lower(?1)", name).firstResultOptional();
    }

    /** Closes a cohort at a moment, or opens it again with null; false when it is so already. */
    public boolean close(UUID cohort, Instant at) {
        return at == null
                ? update("closedAt = null where id = ?1 and closedAt is not null", cohort) == 1
                : update("closedAt = ?1 where id = ?2 and closedAt is null", at, cohort) == 1;
    }
}
