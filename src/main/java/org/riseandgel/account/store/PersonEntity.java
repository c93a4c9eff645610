package org.riseandgel.account.store;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.UUID;
import org.hibernate.annotations.BatchSize;
import org.hibernate.annotations.DynamicUpdate;

/**
 * A person with an account. Only the columns that an act changes are written, so that of two acts at once neither undoes
 * the other.
 */
@Entity
@Table(name = "person")
@DynamicUpdate
public class PersonEntity {
    private static final int ROLES_AT_ONCE = 256;

    @Id
    private UUID id;

    @Column(updatable = false)
    private String signInName;

    @Column(updatable = false)
    private String displayName;

    private String passwordHash;
    private boolean mustChange;
    private Instant oneTimeUntil;
    private Instant disabledAt;

    @Column(updatable = false)
    private Instant createdAt;

    @Column(updatable = false)
    private UUID createdBy;

    /** A set, because its rows are only ever added and removed: the application may not update them. */
    @ElementCollection
    @CollectionTable(name = "person_role", joinColumns = @JoinColumn(name = "person_id"))
    @Column(name = "role")
    @BatchSize(size = ROLES_AT_ONCE)
    private Set<String> roles = new HashSet<>();

    protected PersonEntity() {}

    /**
     * A new person, who cannot sign in before a password is given.
     *
     * @param createdBy who adds this person; null for the first one
     */
    public PersonEntity(UUID id, String signInName, String displayName, Instant createdAt, UUID createdBy) {
        this.id = id;
        this.signInName = signInName;
        this.displayName = displayName;
        this.createdAt = createdAt;
        this.createdBy = createdBy;
    }

    public UUID id() {
        return id;
    }

    public String signInName() {
        return signInName;
    }

    public String displayName() {
        return displayName;
    }

    public String passwordHash() {
        return passwordHash;
    }

    public boolean mustChange() {
        return mustChange;
    }

    /** Until when the one-time password works; null for a password that stays. */
    public Instant oneTimeUntil() {
        return oneTimeUntil;
    }

    /** Since when this person cannot sign in; null for those who can. */
    public Instant disabledAt() {
        return disabledAt;
    }

    public Instant createdAt() {
        return createdAt;
    }

    public Set<String> roles() {
        return Set.copyOf(roles);
    }

    /** Takes a password that stays; a one-time password is spent with it. */
    public void takePassword(String hash) {
        passwordHash = hash;
        mustChange = false;
        oneTimeUntil = null;
    }

    /** Takes a password that must be changed at once and works until then. */
    public void takeOneTimePassword(String hash, Instant until) {
        passwordHash = hash;
        mustChange = true;
        oneTimeUntil = until;
    }

    /** Keeps the password, hashed anew. */
    public void renewHash(String hash) {
        passwordHash = hash;
    }

    /** Shuts the account; somebody who is shut out already stays so since then. */
    public void disable(Instant now) {
        if (disabledAt == null) {
            disabledAt = now;
        }
    }

    public void enable() {
        disabledAt = null;
    }

    /** Has these roles from now on and no other. */
    public void haveRoles(Collection<String> wanted) {
        roles.retainAll(wanted);
        roles.addAll(wanted);
    }
}
