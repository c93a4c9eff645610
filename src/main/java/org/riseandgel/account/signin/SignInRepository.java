package org.riseandgel.account.signin;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** The table of sign-ins: opening, listing, ending. Ending is one statement, so that what has ended is not ended again. */
@ApplicationScoped
class SignInRepository implements PanacheRepositoryBase<SignInEntity, UUID> {
    private static final String END = "endedAt = ?1, endReason = ?2 where endedAt is null and ";

    @Transactional
    void open(byte[] idHash, UUID person, Instant now, String address, String browser) {
        persist(new SignInEntity(idHash, person, now, address, browser));
    }

    @Transactional
    void end(byte[] idHash, EndReason reason, Instant now) {
        update(END + "idHash = ?3", now, reason.word(), idHash);
    }

    @Transactional
    int endAllOf(UUID person, EndReason reason, Instant now) {
        return update(END + "personId = ?3", now, reason.word(), person);
    }

    @Transactional
    int endOthersOf(UUID person, UUID kept, EndReason reason, Instant now) {
        return update(END + "personId = ?3 and publicId <> ?4", now, reason.word(), person, kept);
    }

    @Transactional
    int endOne(UUID person, UUID publicId, EndReason reason, Instant now) {
        return update(END + "personId = ?3 and publicId = ?4", now, reason.word(), person, publicId);
    }

    List<OwnSignIn> openOf(UUID person, Instant now) {
        return find(
                        "personId = ?1 and endedAt is null and endsAt > ?2 and lastSeenAt > ?3 order by lastSeenAt desc",
                        person,
                        now,
                        now.minus(SignIn.IDLE))
                .list()
                .stream()
                .map(SignInEntity::own)
                .toList();
    }
}
