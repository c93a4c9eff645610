package org.riseandgel.account.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;

/** A group that learns together. */
@Entity
@Table(name = "cohort")
public class CohortEntity {
    @Id
    private UUID id;

    private String name;

    @Column(updatable = false)
    private Instant createdAt;

    private Instant closedAt;

    protected CohortEntity() {}

    /** A new cohort, open until it is closed. */
    public CohortEntity(UUID id, String name, Instant createdAt) {
        this.id = id;
        this.name = name;
        this.createdAt = createdAt;
    }

    public UUID id() {
        return id;
    }
}
