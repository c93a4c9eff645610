package org.riseandgel.account.password;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.riseandgel.platform.web.TooBusyException;

/**
 * Makes and checks stored passwords. Every check costs the same time, whether the name is known or not and whatever
 * kind of password is stored. No more checks run at once than there are processors, so that a class that signs in
 * together leaves room for the pages of others; who would wait too long for a turn is told to come back.
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

    /** What is hashed in the place of a text that is too long to be anybody's password. */
    private static final String STAND_IN = "too long to be a password";

    private static final Duration PATIENCE = Duration.ofSeconds(10);

    private final Semaphore turns;
    private final Duration patience;

    @Inject
    Passwords() {
        this(Runtime.getRuntime().availableProcessors(), PATIENCE);
    }

    Passwords(int atOnce, Duration patience) {
        this.turns = new Semaphore(atOnce, true);
        this.patience = patience;
    }

    /** What to store for a password that a person chose; it keeps the rules on length. */
    public String hash(String password) {
        if (PasswordRules.isTooLong(password)) {
            throw new IllegalArgumentException("a password over the longest length cannot be stored");
        }
        return inTurn(() -> PasswordHash.of(password, ROUNDS, salt())).stored();
    }

    /** What to store for a one-time password. */
    public String hashOneTime(String oneTimePassword) {
        return PasswordHash.of(oneTimePassword, ONE_TIME_ROUNDS, salt()).stored();
    }

    /** Whether the typed password is the stored one; without a stored one it takes the same time and is false. */
    public boolean matches(String typed, Optional<String> stored) {
        PasswordHash hash = stored.map(PasswordHash::read).orElse(NOBODY);
        boolean possible = !PasswordRules.isTooLong(typed);
        String tried = possible ? typed : STAND_IN;
        return inTurn(() -> {
            boolean same = hash.matches(tried);
            if (hash.rounds() < ROUNDS) {
                PasswordHash.of(tried, ROUNDS - hash.rounds(), hash.salt());
            }
            return same && possible && stored.isPresent();
        });
    }

    /** Whether a chosen password should be stored anew because it was hashed with fewer rounds than today. */
    public boolean isOutdated(String stored) {
        return PasswordHash.read(stored).rounds() < ROUNDS;
    }

    private <T> T inTurn(Supplier<T> work) {
        takeTurn();
        try {
            return work.get();
        } finally {
            turns.release();
        }
    }

    private void takeTurn() {
        try {
            if (!turns.tryAcquire(patience.toMillis(), TimeUnit.MILLISECONDS)) {
                throw new TooBusyException("A password waited too long for its turn to be checked");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new TooBusyException("The program is stopping; a password was not checked");
        }
    }

    private static byte[] salt() {
        byte[] salt = new byte[16];
        RANDOM.nextBytes(salt);
        return salt;
    }
}
