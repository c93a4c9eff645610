package org.riseandgel.account.signin;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.ByteBuffer;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.platform.web.Caller;

/**
 * Who is signed in. Each request is checked against the table through a memory of a few seconds: what ends a sign-in
 * works here at once and on every other node within that time.
 */
@ApplicationScoped
public class SignIns {
    /** How long a node believes what it read. */
    static final Duration REMEMBERED = Duration.ofSeconds(4);

    private static final int MOST_REMEMBERED = 20_000;

    private final SignInCheck check;
    private final SignInRepository table;
    private final Caller caller;
    private final Clock clock;
    private final Cache<ByteBuffer, Optional<SignIn>> remembered = Caffeine.newBuilder()
            .expireAfterWrite(REMEMBERED)
            .maximumSize(MOST_REMEMBERED)
            .build();

    SignIns(SignInCheck check, SignInRepository table, Caller caller, Clock clock) {
        this.check = check;
        this.table = table;
        this.caller = caller;
        this.clock = clock;
    }

    /** Opens a sign-in and returns the id for the cookie. */
    String open(UUID person) {
        String id = SignInId.make();
        table.open(SignInId.hash(id), person, clock.instant(), caller.address(), caller.browser());
        return id;
    }

    /** What memory says of this cookie: null when the table must be asked, empty when the cookie is worth nothing. */
    Optional<SignIn> remembered(byte[] idHash) {
        Optional<SignIn> known = remembered.getIfPresent(SignInId.key(idHash));
        Instant now = clock.instant();
        boolean mustAsk = known != null
                && known.filter(s -> s.isOver(now) || s.isToBeNoted(now)).isPresent();
        return mustAsk ? null : known;
    }

    /** Asks the table, notes that the person was seen, and remembers the answer. */
    Optional<SignIn> ask(byte[] idHash) {
        Instant now = clock.instant();
        Optional<SignIn> open = check.find(idHash).filter(s -> !s.isOver(now)).map(s -> noted(idHash, s, now));
        remembered.put(SignInId.key(idHash), open);
        return open;
    }

    void end(String id, EndReason reason) {
        byte[] hash = SignInId.hash(id);
        table.end(hash, reason, clock.instant());
        remembered.invalidate(SignInId.key(hash));
    }

    /** Ends all sign-ins of a person. */
    public void endAllOf(UUID person, EndReason reason) {
        table.endAllOf(person, reason, clock.instant());
        forgetAll();
    }

    /** Ends all sign-ins of a person but one. */
    int endOthersOf(UUID person, UUID kept, EndReason reason) {
        int ended = table.endOthersOf(person, kept, reason, clock.instant());
        forgetAll();
        return ended;
    }

    /** Ends one sign-in of a person; false when that person has no such sign-in. */
    boolean endOne(UUID person, UUID publicId) {
        boolean ended = table.endOne(person, publicId, EndReason.ENDED_ELSEWHERE, clock.instant()) == 1;
        forgetAll();
        return ended;
    }

    List<OwnSignIn> openOf(UUID person) {
        return table.openOf(person, clock.instant());
    }

    /** Forgets what was read, so that every cookie is looked up anew. */
    public void forgetAll() {
        remembered.invalidateAll();
    }

    private SignIn noted(byte[] idHash, SignIn signIn, Instant now) {
        if (!signIn.isToBeNoted(now)) {
            return signIn;
        }
        check.seen(idHash, now);
        return signIn.seenAt(now);
    }
}
