package org.riseandgel.account.setup;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.DemoPeople.DemoPerson;
import org.riseandgel.account.SchoolFounded;
import org.riseandgel.account.office.Enrolment;
import org.riseandgel.account.office.Enrolment.NewPerson;
import org.riseandgel.account.office.Enrolment.Part;
import org.riseandgel.account.password.Passwords;

/** Fills the demo school with its invented people and cohorts, before features add what these people did. */
@ApplicationScoped
class DemoSchool {
    private static final int FIRST = 100;

    private final Enrolment enrolment;
    private final Passwords passwords;

    DemoSchool(Enrolment enrolment, Passwords passwords) {
        this.enrolment = enrolment;
        this.passwords = passwords;
    }

    void fill(@Observes @Priority(FIRST) SchoolFounded founded) {
        if (founded.demo()) {
            enrolment.add(DemoPeople.ALL.stream().map(this::person).toList());
            enrolment.addCohort(DemoPeople.FIRST_COHORT, "Autumn evening group");
            enrolment.addCohort(DemoPeople.SECOND_COHORT, "Weekend starters");
            DemoPeople.ALL.forEach(this::join);
        }
    }

    private void join(DemoPerson person) {
        if (person.cohort() != null) {
            enrolment.join(person.cohort(), person.id(), Part.LEARNS);
            enrolment.join(person.cohort(), DemoPeople.INSTRUCTOR, Part.TEACHES);
        }
    }

    /** Everybody may know these passwords, so they need no slow hash. */
    private NewPerson person(DemoPerson p) {
        return new NewPerson(
                p.id(),
                p.signInName(),
                p.displayName(),
                passwords.hashOneTime(p.password()),
                null,
                List.of(p.role()),
                null);
    }
}
