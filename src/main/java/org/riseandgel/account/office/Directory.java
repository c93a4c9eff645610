package org.riseandgel.account.office;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.account.Roles;
import org.riseandgel.account.store.CohortEntity;
import org.riseandgel.account.store.CohortRepository;
import org.riseandgel.account.store.PersonEntity;
import org.riseandgel.account.store.PersonRepository;
import org.riseandgel.platform.school.SchoolSettings;

/** What the office looks up about people and cohorts. */
@ApplicationScoped
class Directory {
    /** More people than this are not listed at once; the search narrows them. */
    static final int MOST = 200;

    private final PersonRepository persons;
    private final CohortRepository cohorts;
    private final EntityManager entities;
    private final SchoolSettings school;

    Directory(PersonRepository persons, CohortRepository cohorts, EntityManager entities, SchoolSettings school) {
        this.persons = persons;
        this.cohorts = cohorts;
        this.entities = entities;
        this.school = school;
    }

    /** A person in the list. */
    record Line(UUID id, String displayName, String signInName, List<String> roles, boolean disabled) {}

    /** A membership that lasts, seen from the cohort or from the person. */
    record Membership(UUID id, String name, String signInName, String part) {
        public boolean isTeaching() {
            return part.equals("teaches");
        }
    }

    /** A person found by the sign-in name. */
    record Found(UUID id, String signInName, List<String> roles) {}

    /**
     * People by name, at most {@link #MOST} and one more.
     *
     * @param text part of the name or of the sign-in name; empty for all
     * @param role only people with this role; empty for all
     * @param state "on" for those who can sign in, "off" for the disabled, else all
     */
    List<Line> search(String text, String role, String state) {
        return persons.search(text, role, state, MOST + 1).stream()
                .map(Directory::line)
                .toList();
    }

    /** The cohorts of a person, by name. */
    List<Membership> cohortsOf(UUID person) {
        return entities.createQuery(
                        """
                        select c.id, c.name, '', m.part
                        from CohortMemberEntity m join CohortEntity c on c.id = m.cohortId
                        where m.personId = ?1 and m.leftAt is null order by lower(c.name), m.part
                        """,
                        Membership.class)
                .setParameter(1, person)
                .getResultList();
    }

    /** The people of a cohort, instructors first. */
    List<Membership> membersOf(UUID cohort) {
        return entities.createQuery(
                        """
                        select p.id, p.displayName, p.signInName, m.part
                        from CohortMemberEntity m join PersonEntity p on p.id = m.personId
                        where m.cohortId = ?1 and m.leftAt is null order by m.part desc, lower(p.displayName), p.id
                        """,
                        Membership.class)
                .setParameter(1, cohort)
                .getResultList();
    }

    /** The people with these sign-in names. */
    List<Found> withSignInNames(List<String> names) {
        return persons.bySignInNames(names).stream()
                .map(p -> new Found(p.id(), p.signInName(), List.copyOf(p.roles())))
                .toList();
    }

    /** The cohort with this name, whatever its capitals. */
    Optional<UUID> cohortNamed(String name) {
        return cohorts.named(name).map(CohortEntity::id);
    }

    /** Whether the cohort was closed. */
    boolean isClosed(UUID cohort) {
        return cohorts.count("id = ?1 and closedAt is not null", cohort) > 0;
    }

    /** A cohort that was closed. */
    record ClosedCohort(UUID id, String name, Instant closedAt) {}

    /** The cohorts that were closed, the latest first. */
    List<ClosedCohort> closedCohorts() {
        return entities.createQuery(
                        """
                        select c.id, c.name, c.closedAt from CohortEntity c where c.closedAt is not null
                        order by c.closedAt desc, lower(c.name)
                        """,
                        ClosedCohort.class)
                .getResultList();
    }

    /** A membership that ended. */
    record Past(UUID person, String name, String part, Instant from, Instant to) {
        public boolean isTeaching() {
            return part.equals("teaches");
        }
    }

    /** Who was in a cohort and left it, the latest first. */
    List<Past> pastOf(UUID cohort) {
        return entities.createQuery(
                        """
                        select p.id, p.displayName, m.part, m.joinedAt, m.leftAt
                        from CohortMemberEntity m join PersonEntity p on p.id = m.personId
                        where m.cohortId = ?1 and m.leftAt is not null order by m.leftAt desc, lower(p.displayName), p.id
                        """,
                        Past.class)
                .setParameter(1, cohort)
                .getResultList();
    }

    /** A cohort found by its name. */
    record Cohort(UUID id, boolean closed) {}

    /** The cohorts that there are of these names, which are in small letters. */
    Map<String, Cohort> cohortsNamed(Collection<String> names) {
        Map<String, Cohort> found = new HashMap<>();
        if (!names.isEmpty()) {
            entities.createQuery(
                            """
                            select lower(c.name), c.id, case when c.closedAt is null then false else true end
                            from CohortEntity c where lower(c.name) in :names
                            """,
                            Object[].class)
                    .setParameter("names", names)
                    .getResultList()
                    .forEach(row -> found.put((String) row[0], new Cohort((UUID) row[1], (Boolean) row[2])));
        }
        return found;
    }

    /** Whether another person who can sign in has the office role. Holds the school's row, so that two cannot leave. */
    boolean hasAnotherOffice(UUID person) {
        school.hold();
        return persons.hasAnother(Roles.OFFICE, person);
    }

    private static Line line(PersonEntity p) {
        List<String> roles = p.roles().stream().sorted().toList();
        return new Line(p.id(), p.displayName(), p.signInName(), roles, p.disabledAt() != null);
    }
}
