package org.riseandgel.account.signin;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import org.riseandgel.account.SignInName;
import org.riseandgel.account.password.Passwords;
import org.riseandgel.account.signin.Credentials.Credential;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.web.Caller;
import org.riseandgel.platform.web.Problem;

/**
 * Checks a typed password, at sign-in and again before weighty acts. Every try goes through the {@link Throttle}, takes
 * the same steps whether the name is known or not, and is written to the audit log when it fails.
 */
@ApplicationScoped
public class PasswordCheck {
    private final Credentials credentials;
    private final Passwords passwords;
    private final Throttle throttle;
    private final AuditLog audit;
    private final Caller caller;
    private final Clock clock;

    PasswordCheck(
            Credentials credentials,
            Passwords passwords,
            Throttle throttle,
            AuditLog audit,
            Caller caller,
            Clock clock) {
        this.credentials = credentials;
        this.passwords = passwords;
        this.throttle = throttle;
        this.audit = audit;
        this.caller = caller;
        this.clock = clock;
    }

    /** A try to sign in. */
    Attempt atSignIn(String typedName, String password) {
        String name = SignInName.normal(typedName);
        boolean possible = SignInName.isPossible(name);
        return attempt(
                possible ? name : "?" + Integer.toHexString(name.hashCode()),
                credentials.byName(possible ? name : ""),
                password);
    }

    /** The password again, of somebody who is signed in. */
    public Attempt again(UUID person, String password) {
        Credential credential = credentials.of(person).orElseThrow();
        return attempt(credential.signInName(), Optional.of(credential), password);
    }

    /** What is wrong with the password typed again into this field; empty when it is the right one. */
    public Optional<Problem> problemWith(UUID person, String password, String field) {
        if (password.isEmpty()) {
            return Optional.of(new Problem(field, "Type your own password again, to show that it is you."));
        }
        Attempt attempt = again(person, password);
        String message = attempt.outcome() == Attempt.Outcome.WRONG
                ? "This is not your own password. Type the one you signed in with."
                : attempt.message();
        return attempt.isRight() ? Optional.empty() : Optional.of(new Problem(field, message));
    }

    private Attempt attempt(String account, Optional<Credential> credential, String password) {
        OptionalLong wait = throttle.ask(account, caller.address());
        if (wait.isPresent()) {
            return Attempt.waiting(wait.getAsLong());
        }
        boolean same = passwords.matches(password, credential.map(Credential::hash));
        boolean usable = credential.filter(c -> c.isUsable(clock.instant())).isPresent();
        return same && usable ? right(credential.get(), password) : wrong(account);
    }

    private Attempt right(Credential credential, String password) {
        throttle.forget(credential.signInName());
        if (!credential.mustChange() && passwords.isOutdated(credential.hash())) {
            credentials.renew(credential.person(), password);
        }
        return Attempt.right(credential.person());
    }

    private Attempt wrong(String account) {
        throttle.failed(caller.address());
        audit.note(null, "password-refused", account, "");
        return Attempt.wrong();
    }
}
