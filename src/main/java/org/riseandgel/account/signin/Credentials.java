package org.riseandgel.account.signin;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.account.password.OneTimePassword;
import org.riseandgel.account.password.Passwords;
import org.riseandgel.account.store.PersonEntity;
import org.riseandgel.account.store.PersonRepository;

/** What is stored to prove who somebody is. */
@ApplicationScoped
public class Credentials {
    private final PersonRepository persons;
    private final Passwords passwords;
    private final Clock clock;

    Credentials(PersonRepository persons, Passwords passwords, Clock clock) {
        this.persons = persons;
        this.passwords = passwords;
        this.clock = clock;
    }

    /** The stored proof of one person. */
    record Credential(
            UUID person, String signInName, String hash, boolean mustChange, Instant until, boolean disabled) {
        boolean isUsable(Instant now) {
            return !disabled && (until == null || now.isBefore(until));
        }
    }

    Optional<Credential> byName(String signInName) {
        return persons.bySignInName(signInName).map(Credentials::read);
    }

    Optional<Credential> of(UUID person) {
        return persons.findByIdOptional(person).map(Credentials::read);
    }

    /** Stores a password that the person chose; a one-time password is spent with it. */
    @Transactional
    void choose(UUID person, String password) {
        String hash = passwords.hash(password);
        persons.get(person).takePassword(hash);
    }

    /** Stores the same password with today's rounds. */
    @Transactional
    void renew(UUID person, String password) {
        String hash = passwords.hash(password);
        persons.get(person).renewHash(hash);
    }

    /** Gives a person a new one-time password and returns it; it is kept nowhere else. */
    @Transactional
    public String giveOneTime(UUID person) {
        String password = OneTimePassword.make();
        String hash = passwords.hashOneTime(password);
        persons.get(person).takeOneTimePassword(hash, clock.instant().plus(OneTimePassword.LASTS));
        return password;
    }

    private static Credential read(PersonEntity p) {
        return new Credential(
                p.id(), p.signInName(), p.passwordHash(), p.mustChange(), p.oneTimeUntil(), p.disabledAt() != null);
    }
}
