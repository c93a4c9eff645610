package org.riseandgel.account.office;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.account.Roles;
import org.riseandgel.account.office.Directory.Found;
import org.riseandgel.account.office.Enrolment.NewPerson;
import org.riseandgel.account.office.Enrolment.Part;
import org.riseandgel.account.office.OfficeDesk.Added;
import org.riseandgel.account.office.Roster.Entry;
import org.riseandgel.account.office.Roster.Fault;
import org.riseandgel.account.password.OneTimePassword;
import org.riseandgel.account.password.Passwords;
import org.riseandgel.platform.audit.AuditLog;

/** Takes in a list of people: all of it, in one transaction, or nothing. */
@ApplicationScoped
class RosterImport {
    private final Directory directory;
    private final Enrolment enrolment;
    private final Passwords passwords;
    private final AuditLog audit;
    private final Clock clock;

    RosterImport(Directory directory, Enrolment enrolment, Passwords passwords, AuditLog audit, Clock clock) {
        this.directory = directory;
        this.enrolment = enrolment;
        this.passwords = passwords;
        this.audit = audit;
        this.clock = clock;
    }

    /** The list in the text, also held against the people there are. */
    Roster read(String text) {
        Roster roster = RosterReader.read(text);
        List<String> names = roster.entries().stream().map(Entry::signInName).toList();
        Set<String> taken =
                directory.withSignInNames(names).stream().map(Found::signInName).collect(Collectors.toSet());
        List<Fault> faults = new ArrayList<>(roster.faults());
        roster.entries().stream()
                .filter(e -> taken.contains(e.signInName()))
                .forEach(e -> faults.add(new Fault(
                        e.line(), "The sign-in name " + e.signInName() + " is taken. Add a letter or a digit to it.")));
        return new Roster(roster.entries(), List.copyOf(faults));
    }

    /** The cohorts of the list that do not exist yet. */
    List<String> newCohorts(Roster roster) {
        return firstSpellings(roster).values().stream()
                .filter(name -> directory.cohortNamed(name).isEmpty())
                .sorted()
                .toList();
    }

    /** Adds everybody in the list and returns their one-time passwords, which are kept nowhere else. */
    @Transactional
    List<Added> take(Roster roster, UUID by) {
        if (!roster.isRight()) {
            throw new IllegalArgumentException("a list with faults cannot be taken in");
        }
        List<Added> added = roster.entries().stream()
                .map(e -> new Added(UUID.randomUUID(), e.name(), e.signInName(), OneTimePassword.make()))
                .toList();
        Instant until = clock.instant().plus(OneTimePassword.LASTS);
        List<NewPerson> people = new ArrayList<>();
        for (int i = 0; i < added.size(); i++) {
            people.add(person(added.get(i), roster.entries().get(i).role(), until, by));
        }
        enrolment.add(people);
        joinCohorts(roster, added);
        audit.note(by, "people-imported", "people", "" + added.size());
        return added;
    }

    private NewPerson person(Added a, String role, Instant until, UUID by) {
        return new NewPerson(
                a.id(),
                a.signInName(),
                a.displayName(),
                passwords.hashOneTime(a.oneTimePassword()),
                until,
                List.of(role),
                by);
    }

    private void joinCohorts(Roster roster, List<Added> added) {
        Map<String, UUID> cohorts = new HashMap<>();
        firstSpellings(roster).forEach((key, name) -> cohorts.put(key, cohort(name)));
        for (int i = 0; i < added.size(); i++) {
            Entry entry = roster.entries().get(i);
            if (!entry.cohort().isEmpty()) {
                Part part = entry.role().equals(Roles.INSTRUCTOR) ? Part.TEACHES : Part.LEARNS;
                enrolment.join(cohorts.get(key(entry.cohort())), added.get(i).id(), part);
            }
        }
    }

    private UUID cohort(String name) {
        return directory.cohortNamed(name).orElseGet(() -> {
            UUID id = UUID.randomUUID();
            enrolment.addCohort(id, name);
            return id;
        });
    }

    private static Map<String, String> firstSpellings(Roster roster) {
        return roster.entries().stream()
                .map(Entry::cohort)
                .filter(name -> !name.isEmpty())
                .collect(Collectors.toMap(RosterImport::key, name -> name, (first, again) -> first));
    }

    private static String key(String cohort) {
        return cohort.toLowerCase(Locale.ROOT);
    }
}
