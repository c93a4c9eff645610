package org.riseandgel.account.store;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;

/** The table of cohorts. */
@ApplicationScoped
public class CohortRepository implements PanacheRepositoryBase<CohortEntity, UUID> {
    /** The cohort with this name, whatever its capitals. */
    public Optional<CohortEntity> named(String name) {
        return find("lower(name) = lower(?1)", name).firstResultOptional();
    }
}
