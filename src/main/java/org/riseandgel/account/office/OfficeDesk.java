package org.riseandgel.account.office;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.riseandgel.account.PersonView;
import org.riseandgel.account.Roles;
import org.riseandgel.account.office.Enrolment.NewPerson;
import org.riseandgel.account.office.Enrolment.Part;
import org.riseandgel.account.password.OneTimePassword;
import org.riseandgel.account.password.Passwords;
import org.riseandgel.account.signin.Credentials;
import org.riseandgel.account.signin.EndReason;
import org.riseandgel.account.signin.SignIns;
import org.riseandgel.account.signin.Throttle;
import org.riseandgel.account.store.PersonRepository;
import org.riseandgel.platform.audit.AuditLog;

/** What the office does to people's accounts. Each act is one transaction with its audit entry. */
@ApplicationScoped
class OfficeDesk {
    static final String LAST_OFFICE = "This is the only office account that can sign in. Give another person the office"
            + " role first, so that the school is never locked out.";

    private final PersonRepository persons;
    private final Directory directory;
    private final Enrolment enrolment;
    private final Credentials credentials;
    private final Passwords passwords;
    private final SignIns signIns;
    private final Throttle throttle;
    private final AuditLog audit;
    private final Clock clock;

    OfficeDesk(
            PersonRepository persons,
            Directory directory,
            Enrolment enrolment,
            Credentials credentials,
            Passwords passwords,
            SignIns signIns,
            Throttle throttle,
            AuditLog audit,
            Clock clock) {
        this.persons = persons;
        this.directory = directory;
        this.enrolment = enrolment;
        this.credentials = credentials;
        this.passwords = passwords;
        this.signIns = signIns;
        this.throttle = throttle;
        this.audit = audit;
        this.clock = clock;
    }

    /** A new person with the one-time password that is shown once. */
    record Added(UUID id, String displayName, String signInName, String oneTimePassword) {}

    @Transactional
    Added add(PersonForm form, Optional<UUID> cohort, UUID by) {
        UUID id = UUID.randomUUID();
        String password = OneTimePassword.make();
        enrolment.add(List.of(new NewPerson(
                id,
                form.normalSignInName(),
                form.tidyName(),
                passwords.hashOneTime(password),
                clock.instant().plus(OneTimePassword.LASTS),
                Set.copyOf(form.getRoles()),
                by)));
        cohort.ifPresent(c -> enrolment.join(c, id, partOf(form.getRoles())));
        audit.note(by, "person-added", id.toString(), form.normalSignInName() + " " + form.getRoles());
        return new Added(id, form.tidyName(), form.normalSignInName(), password);
    }

    /** Disables an account and ends its sign-ins; or says why not. */
    @Transactional
    Optional<String> disable(PersonView person, UUID by) {
        if (person.roles().contains(Roles.OFFICE) && !directory.hasAnotherOffice(person.id())) {
            return Optional.of(LAST_OFFICE);
        }
        persons.get(person.id()).disable(clock.instant());
        signIns.endAllOf(person.id(), EndReason.DISABLED);
        audit.note(by, "person-disabled", person.id().toString(), "");
        return Optional.empty();
    }

    @Transactional
    void enable(PersonView person, UUID by) {
        persons.get(person.id()).enable();
        audit.note(by, "person-enabled", person.id().toString(), "");
    }

    /** Gives a new one-time password and ends all sign-ins. */
    @Transactional
    Added giveOneTime(PersonView person, UUID by) {
        String password = credentials.giveOneTime(person.id());
        throttle.forget(person.signInName());
        signIns.endAllOf(person.id(), EndReason.PASSWORD_CHANGED);
        audit.note(by, "one-time-password-given", person.id().toString(), "");
        return new Added(person.id(), person.displayName(), person.signInName(), password);
    }

    /** Changes the roles and ends all sign-ins; or says why not. */
    @Transactional
    Optional<String> changeRoles(PersonView person, List<String> roles, UUID by) {
        boolean losesOffice = person.roles().contains(Roles.OFFICE) && !roles.contains(Roles.OFFICE);
        if (losesOffice && !person.isDisabled() && !directory.hasAnotherOffice(person.id())) {
            return Optional.of(LAST_OFFICE);
        }
        persons.hold(person.id()).haveRoles(roles);
        signIns.endAllOf(person.id(), EndReason.ROLE_CHANGED);
        String change = new TreeSet<>(person.roles()) + " to " + new TreeSet<>(roles);
        audit.note(by, "roles-changed", person.id().toString(), change);
        return Optional.empty();
    }

    private static Part partOf(List<String> roles) {
        return roles.contains(Roles.APPRENTICE) ? Part.LEARNS : Part.TEACHES;
    }
}
