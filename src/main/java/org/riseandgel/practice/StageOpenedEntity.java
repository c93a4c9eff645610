package org.riseandgel.practice;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** That an instructor opened a stage to a person, and why: added once, never changed. */
@Entity
@Table(name = "stage_opened")
@IdClass(StageOpenedEntity.Key.class)
@Immutable
class StageOpenedEntity {
    @Id
    private UUID personId;

    @Id
    private String stage;

    private UUID openedBy;
    private String reason;
    private Instant openedAt;

    protected StageOpenedEntity() {}

    record Key(UUID personId, String stage) {}

    String stage() {
        return stage;
    }

    StageDoors.ByHand view() {
        return new StageDoors.ByHand(openedBy, reason, openedAt);
    }
}
