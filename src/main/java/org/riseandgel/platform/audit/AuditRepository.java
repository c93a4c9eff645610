package org.riseandgel.platform.audit;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;

/** The table of audit entries. */
@ApplicationScoped
class AuditRepository implements PanacheRepositoryBase<AuditEntity, UUID> {}
