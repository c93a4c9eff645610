package org.riseandgel.account.store;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.UUID;

/** The table of memberships. Who joins or leaves twice at once does so once, because the database decides. */
@ApplicationScoped
public class CohortMemberRepository implements PanacheRepositoryBase<CohortMemberEntity, UUID> {
    /** Begins a membership; false if it lasts already. */
    public boolean join(UUID cohort, UUID person, String part, Instant now) {
        return getEntityManager()
                        .createQuery(
                                """
                                insert into CohortMemberEntity (id, cohortId, personId, part, joinedAt)
                                values (?1, ?2, ?3, ?4, ?5) on conflict do nothing
                                """)
                        .setParameter(1, UUID.randomUUID())
                        .setParameter(2, cohort)
                        .setParameter(3, person)
                        .setParameter(4, part)
                        .setParameter(5, now)
                        .executeUpdate()
                == 1;
    }

    /** Ends a membership, never before its beginning; false if it does not last. */
    public boolean leave(UUID cohort, UUID person, String part, Instant now) {
        return update(
                        "leftAt = greatest(joinedAt, ?1)"
                                + " where cohortId = ?2 and personId = ?3 and part = ?4 and leftAt is null",
                        now,
                        cohort,
                        person,
                        part)
                == 1;
    }

    /** Whether one person teaches an open cohort in which the other one learns. */
    public boolean teaches(UUID instructor, UUID learner) {
        return count(
                        """
                        from CohortMemberEntity t
                        join CohortMemberEntity l on l.cohortId = t.cohortId
                        join CohortEntity c on c.id = t.cohortId
                        where t.personId = ?1 and t.part = 'teaches' and t.leftAt is null
                          and l.personId = ?2 and l.part = 'learns' and l.leftAt is null and c.closedAt is null
                        """,
                        instructor,
                        learner)
                > 0;
    }
}
