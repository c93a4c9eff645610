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
import java.util.Optional;
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
        Map<String, Directory.Cohort> cohorts =
                directory.cohortsNamed(firstSpellings(roster).keySet());
        roster.entries().stream()
                .filter(e -> Optional.ofNullable(cohorts.get(key(e.cohort())))
                        .filter(Directory.Cohort::closed)
                        .isPresent())
                .forEach(e -> faults.add(new Fault(
                        e.line(),
                        "The cohort " + e.cohort() + " is closed. Open it again first, or write another cohort.")));
        return new Roster(
                roster.entries(),
                faults.stream().limit(RosterReader.MOST_FAULTS).toList());
    }

    /** The cohorts of the list that do not exist yet. */
    List<String> newCohorts(Roster roster) {
        Map<String, String> names = firstSpellings(roster);
        Map<String, Directory.Cohort> there = directory.cohortsNamed(names.keySet());
        return names.entrySet().stream()
                .filter(name -> !there.containsKey(name.getKey()))
                .map(Map.Entry::getValue)
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
        Map<String, UUID> cohorts = cohorts(firstSpellings(roster));
        List<Enrolment.Membership> joining = new ArrayList<>();
        for (int i = 0; i < added.size(); i++) {
            Entry entry = roster.entries().get(i);
            if (!entry.cohort().isEmpty()) {
                Part part = entry.role().equals(Roles.INSTRUCTOR) ? Part.TEACHES : Part.LEARNS;
                joining.add(new Enrolment.Membership(
                        cohorts.get(key(entry.cohort())), added.get(i).id(), part));
            }
        }
        enrolment.joinAll(joining);
    }

    /** The cohorts of these names, made where there is none. */
    private Map<String, UUID> cohorts(Map<String, String> names) {
        Map<String, UUID> ids = new HashMap<>();
        directory.cohortsNamed(names.keySet()).forEach((key, cohort) -> ids.put(key, cohort.id()));
        names.forEach((key, name) -> ids.computeIfAbsent(key, missing -> {
            UUID id = UUID.randomUUID();
            enrolment.addCohort(id, name);
            return id;
        }));
        return ids;
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
