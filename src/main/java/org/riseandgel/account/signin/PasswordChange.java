package org.riseandgel.account.signin;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.account.password.PasswordRules;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.web.House;
import org.riseandgel.platform.web.Problem;

/** Changes a person's own password and ends all other sign-ins of that person. */
@ApplicationScoped
class PasswordChange {
    private final PasswordCheck check;
    private final Credentials credentials;
    private final SignIns signIns;
    private final People people;
    private final House house;
    private final AuditLog audit;

    PasswordChange(
            PasswordCheck check, Credentials credentials, SignIns signIns, People people, House house, AuditLog audit) {
        this.check = check;
        this.credentials = credentials;
        this.signIns = signIns;
        this.people = people;
        this.house = house;
        this.audit = audit;
    }

    /** Changes the password, or says what is wrong and changes nothing. */
    List<Problem> change(UUID person, UUID signIn, String current, String chosen, String again) {
        Optional<Problem> wrong = problemOfNew(person, current, chosen, again);
        if (wrong.isPresent()) {
            return List.of(wrong.get());
        }
        Attempt attempt = check.again(person, current);
        if (!attempt.isRight()) {
            return List.of(new Problem(
                    "current",
                    attempt.outcome() == Attempt.Outcome.WRONG
                            ? "This is not your present password. Type the one you signed in with."
                            : attempt.message()));
        }
        store(person, signIn, chosen);
        signIns.forgetAll();
        return List.of();
    }

    @Transactional
    void store(UUID person, UUID signIn, String chosen) {
        credentials.choose(person, chosen);
        signIns.endOthersOf(person, signIn, EndReason.PASSWORD_CHANGED);
        audit.note(person, "password-changed", person.toString(), "");
    }

    private Optional<Problem> problemOfNew(UUID person, String current, String chosen, String again) {
        PersonView view = people.find(person).orElseThrow();
        Optional<String> rule =
                PasswordRules.problem(chosen, List.of(view.displayName(), view.signInName(), house.getSchoolName()));
        if (rule.isPresent()) {
            return Optional.of(new Problem("new-password", rule.get()));
        }
        if (chosen.equals(current)) {
            return Optional.of(new Problem("new-password", "The new password is the present one. Choose another."));
        }
        return chosen.equals(again)
                ? Optional.empty()
                : Optional.of(new Problem("new-password-again", "The two new passwords differ. Type the same twice."));
    }
}
