package org.riseandgel.platform.audit;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** An entry of the audit log: added and read, never changed. */
@Entity
@Table(name = "audit_entry")
@Immutable
class AuditEntity {
    @Id
    private UUID id;

    @Column(name = "at")
    private Instant notedAt;

    private UUID actor;
    private String action;
    private String subject;
    private String detail;
    private String address;

    protected AuditEntity() {}

    AuditEntity(AuditLog.Entry entry, Instant notedAt, String address) {
        this.id = UUID.randomUUID();
        this.notedAt = notedAt;
        this.actor = entry.actor();
        this.action = entry.action();
        this.subject = entry.subject();
        this.detail = entry.detail();
        this.address = address;
    }

    AuditLog.Entry view() {
        return new AuditLog.Entry(actor, action, subject, detail);
    }
}
