package org.riseandgel.account.signin;

import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.UUID;

/** A sign-in that has not been ended, with what is known of its person. */
record SignIn(
        UUID publicId,
        UUID personId,
        String displayName,
        Set<String> roles,
        boolean mustChange,
        Instant lastSeen,
        Instant endsAt) {
    /** Ends by itself when nothing was asked for so long. */
    static final Duration IDLE = Duration.ofMinutes(30);

    /** Ends by itself, however busy. */
    static final Duration ABSOLUTE = Duration.ofHours(12);

    /** Being seen is written down no more often than this. */
    static final Duration SEEN_STEP = Duration.ofMinutes(1);

    boolean isOver(Instant now) {
        return !now.isBefore(endsAt) || !now.isBefore(lastSeen.plus(IDLE));
    }

    boolean isToBeNoted(Instant now) {
        return !now.isBefore(lastSeen.plus(SEEN_STEP));
    }

    SignIn seenAt(Instant now) {
        return new SignIn(publicId, personId, displayName, roles, mustChange, now, endsAt);
    }
}
