package org.riseandgel.account.signin;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;

/** A sign-in, open or ended. Its entity goes by the public id, because an array of bytes makes a poor identity. */
@Entity
@Table(name = "sign_in")
class SignInEntity {
    @Id
    private UUID publicId;

    @Column(updatable = false)
    private byte[] idHash;

    @Column(updatable = false)
    private UUID personId;

    @Column(updatable = false)
    private Instant createdAt;

    private Instant lastSeenAt;

    @Column(updatable = false)
    private Instant endsAt;

    private Instant endedAt;
    private String endReason;

    @Column(updatable = false)
    private String address;

    @Column(updatable = false)
    private String browser;

    protected SignInEntity() {}

    SignInEntity(byte[] idHash, UUID personId, Instant now, String address, String browser) {
        this.publicId = UUID.randomUUID();
        this.idHash = idHash;
        this.personId = personId;
        this.createdAt = now;
        this.lastSeenAt = now;
        this.endsAt = now.plus(SignIn.ABSOLUTE);
        this.address = address;
        this.browser = browser;
    }

    OwnSignIn own() {
        return new OwnSignIn(publicId, createdAt, lastSeenAt, address, browser);
    }
}
