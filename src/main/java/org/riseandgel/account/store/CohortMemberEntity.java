package org.riseandgel.account.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;

/**
 * A span of time in which a person learns or teaches in a cohort. It names person and cohort by id, so that nothing is
 * ever loaded by walking from one row to the next.
 */
@Entity
@Table(name = "cohort_member")
public class CohortMemberEntity {
    @Id
    private UUID id;

    @Column(updatable = false)
    private UUID cohortId;

    @Column(updatable = false)
    private UUID personId;

    @Column(updatable = false)
    private String part;

    @Column(updatable = false)
    private Instant joinedAt;

    private Instant leftAt;

    protected CohortMemberEntity() {}
}
