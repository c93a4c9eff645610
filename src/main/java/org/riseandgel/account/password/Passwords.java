package org.riseandgel.account.password;

import jakarta.enterprise.context.ApplicationScoped;
import java.security.SecureRandom;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;

/**
 * Makes and checks stored passwords. Every check costs the same time, whether the name is known or not and whatever
 * kind of password is stored. No more checks run at once than there are processors, so that a class that signs in
 * together leaves room for the pages of others.
 */
@ApplicationScoped
public class Passwords {
    /** Rounds for a password that a person chose. */
    static final int ROUNDS = 210_000;

    /** Rounds for a one-time password: its own 99 random bits need no slow function to stay secret. */
    static final int ONE_TIME_ROUNDS = 1_000;

    /** What is compared when there is no such person. */
    private static final PasswordHash NOBODY = new PasswordHash(ROUNDS, new byte[16], new byte[64]);

    private static final SecureRandom RANDOM = new SecureRandom();

    private final Semaphore turns = new Semaphore(Runtime.getRuntime().availableProcessors(), true);

    /** What to store for a password that a person chose. */
    public String hash(String password) {
        return inTurn(() -> PasswordHash.of(password, ROUNDS, salt())).stored();
    }

    /** What to store for a one-time password. */
    public String hashOneTime(String oneTimePassword) {
        return PasswordHash.of(oneTimePassword, ONE_TIME_ROUNDS, salt()).stored();
    }

    /** Whether the typed password is the stored one; without a stored one it takes the same time and is false. */
    public boolean matches(String typed, Optional<String> stored) {
        PasswordHash hash = stored.map(PasswordHash::read).orElse(NOBODY);
        return inTurn(() -> {
            boolean same = hash.matches(typed);
            if (hash.rounds() < ROUNDS) {
                PasswordHash.of(typed, ROUNDS - hash.rounds(), hash.salt());
            }
            return same && stored.isPresent();
        });
    }

    /** Whether a chosen password should be stored anew because it was hashed with fewer rounds than today. */
    public boolean isOutdated(String stored) {
        return PasswordHash.read(stored).rounds() < ROUNDS;
    }

    private <T> T inTurn(Supplier<T> work) {
        turns.acquireUninterruptibly();
        try {
            return work.get();
        } finally {
            turns.release();
        }
    }

    private static byte[] salt() {
        byte[] salt = new byte[16];
        RANDOM.nextBytes(salt);
        return salt;
    }
}
