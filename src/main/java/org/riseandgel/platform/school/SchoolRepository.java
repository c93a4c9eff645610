package org.riseandgel.platform.school;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.util.Optional;

/**
 * The table of the school. Reading makes its own transaction where there is none, because the school is also asked for
 * outside of requests.
 */
@ApplicationScoped
class SchoolRepository implements PanacheRepositoryBase<SchoolEntity, Short> {
    @Transactional
    Optional<School> school() {
        return findByIdOptional(SchoolEntity.ONLY).map(SchoolEntity::view);
    }

    @Transactional
    boolean exists() {
        return count() > 0;
    }

    /** Makes everybody else who calls this wait until the transaction has ended. */
    void hold() {
        findById(SchoolEntity.ONLY, LockModeType.PESSIMISTIC_WRITE);
    }
}
