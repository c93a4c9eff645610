package org.riseandgel.account.setup;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
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

    /** Longer than anything that the demo's people are said to have done. */
    private static final Duration HERE_SINCE = Duration.ofDays(400);

    private final Enrolment enrolment;
    private final Passwords passwords;
    private final Clock clock;

    DemoSchool(Enrolment enrolment, Passwords passwords, Clock clock) {
        this.enrolment = enrolment;
        this.passwords = passwords;
        this.clock = clock;
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
            Instant since = clock.instant().minus(HERE_SINCE);
            enrolment.join(person.cohort(), person.id(), Part.LEARNS, since);
            enrolment.join(person.cohort(), DemoPeople.INSTRUCTOR, Part.TEACHES, since);
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
