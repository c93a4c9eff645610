package org.riseandgel.account;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.TypedQuery;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.account.store.CohortMemberRepository;
import org.riseandgel.account.store.PersonEntity;
import org.riseandgel.account.store.PersonRepository;

/** The school's people and cohorts, for every feature to read. Only memberships that last now count. */
@ApplicationScoped
public class People {
    private static final String COHORT =
            """
            select c.id, c.name,
                   cast((select count(*) from CohortMemberEntity l
                         where l.cohortId = c.id and l.part = 'learns' and l.leftAt is null) as Integer)
            from CohortEntity c
            """;

    private static final String MEMBERSHIPS =
            """
            select c.id, c.name, p.id, p.displayName, m.joinedAt, m.leftAt
            from CohortMemberEntity m join CohortEntity c on c.id = m.cohortId join PersonEntity p on p.id = m.personId
            where\s""";

    private static final String LEARNERS_SEEN =
            """
            select c.name, p.id, p.displayName, p.signInName
            from CohortEntity c
            left join CohortMemberEntity m on m.cohortId = c.id and m.part = 'learns' and m.leftAt is null
            left join PersonEntity p on p.id = m.personId and p.disabledAt is null
            where c.id = :cohort and (:office = true or c.closedAt is null and exists (
                select 1 from CohortMemberEntity t
                where t.cohortId = c.id and t.personId = :asker and t.part = 'teaches' and t.leftAt is null))
            order by lower(p.displayName), p.id
            """;

    private final PersonRepository persons;
    private final CohortMemberRepository members;
    private final EntityManager entities;

    People(PersonRepository persons, CohortMemberRepository members, EntityManager entities) {
        this.persons = persons;
        this.members = members;
        this.entities = entities;
    }

    /** The person with this id, also when disabled. */
    public Optional<PersonView> find(UUID person) {
        return persons.withRoles(person).map(People::view);
    }

    /** The person with this sign-in name, also when disabled. */
    public Optional<PersonView> withSignInName(String name) {
        return persons.bySignInNames(List.of(SignInName.normal(name))).stream()
                .map(People::view)
                .findFirst();
    }

    /** Those in whose name or sign-in name a text stands, at most so many. */
    public List<PersonView> named(String text, int most) {
        return persons.search(text, "", "", most).stream().map(People::view).toList();
    }

    /** The display names of some people; whom the school does not know is left out. */
    public Map<UUID, String> names(Collection<UUID> people) {
        Map<UUID, String> names = new HashMap<>();
        if (!people.isEmpty()) {
            entities.createQuery("select p.id, p.displayName from PersonEntity p where p.id in :people", Object[].class)
                    .setParameter("people", people)
                    .getResultList()
                    .forEach(row -> names.put((UUID) row[0], (String) row[1]));
        }
        return names;
    }

    /** The open cohorts that this person teaches, by name. */
    public List<CohortView> cohortsTaughtBy(UUID instructor) {
        return cohorts(
                        """
                        where c.closedAt is null and exists (select 1 from CohortMemberEntity m
                            where m.cohortId = c.id and m.personId = :person and m.part = 'teaches' and m.leftAt is null)
                        order by lower(c.name)
                        """)
                .setParameter("person", instructor)
                .getResultList();
    }

    /** The open cohorts in which this person learns now, by name. */
    public List<CohortView> cohortsLearnedIn(UUID learner) {
        return cohorts(
                        """
                        where c.closedAt is null and exists (select 1 from CohortMemberEntity m
                            where m.cohortId = c.id and m.personId = :person and m.part = 'learns' and m.leftAt is null)
                        order by lower(c.name)
                        """)
                .setParameter("person", learner)
                .getResultList();
    }

    /** All open cohorts, by name. */
    public List<CohortView> allCohorts() {
        return cohorts("where c.closedAt is null order by lower(c.name)").getResultList();
    }

    /** The cohort with this id. */
    public Optional<CohortView> cohort(UUID cohort) {
        return cohorts("where c.id = :cohort").setParameter("cohort", cohort).getResultList().stream()
                .findFirst();
    }

    /** Those who learn in a cohort now, by name; disabled people are left out. */
    public List<PersonView> learnersOf(UUID cohort) {
        return persons.learnersOf(cohort).stream().map(People::view).toList();
    }

    /** Somebody who learns in a cohort, as a board needs them. */
    public record Learner(UUID id, String displayName, String signInName) {}

    /** A cohort with those who learn in it now, by name; disabled people are left out. */
    public record CohortLearners(CohortView cohort, List<Learner> learners) {}

    /**
     * A cohort with its learners in one statement, for whoever may see it: an instructor who teaches it now and the
     * office, which also sees cohorts that were closed. Empty for anybody else.
     */
    public Optional<CohortLearners> learnersSeenBy(UUID asker, boolean office, UUID cohort) {
        List<Object[]> rows = entities.createQuery(LEARNERS_SEEN, Object[].class)
                .setParameter("cohort", cohort)
                .setParameter("asker", asker)
                .setParameter("office", office)
                .getResultList();
        List<Learner> learners = rows.stream()
                .filter(row -> row[1] != null)
                .map(row -> new Learner((UUID) row[1], (String) row[2], (String) row[3]))
                .toList();
        return rows.stream()
                .findFirst()
                .map(row -> new CohortLearners(new CohortView(cohort, (String) row[0], learners.size()), learners));
    }

    /**
     * A span of time in which somebody learned in a cohort.
     *
     * @param until when it ended; null while it lasts
     */
    public record Membership(UUID cohort, String cohortName, UUID person, String name, Instant from, Instant until) {}

    /** Everybody who learns or learned in a cohort, span by span, by name. */
    public List<Membership> learnedIn(UUID cohort) {
        return memberships("c.id = :id", cohort, "lower(p.displayName), p.id, m.joinedAt");
    }

    /** The cohorts in which somebody learns or learned, the latest span first. */
    public List<Membership> cohortsOverTime(UUID person) {
        return memberships("p.id = :id", person, "m.joinedAt desc, lower(c.name)");
    }

    private List<Membership> memberships(String which, UUID id, String order) {
        return entities.createQuery(MEMBERSHIPS + which + " and m.part = 'learns' order by " + order, Membership.class)
                .setParameter("id", id)
                .getResultList();
    }

    /** Whether this person teaches a cohort in which the other one learns now. */
    public boolean teaches(UUID instructor, UUID learner) {
        return members.teaches(instructor, learner);
    }

    private TypedQuery<CohortView> cohorts(String which) {
        return entities.createQuery(COHORT + which, CohortView.class);
    }

    private static PersonView view(PersonEntity p) {
        return new PersonView(p.id(), p.signInName(), p.displayName(), p.roles(), p.disabledAt(), p.createdAt());
    }
}
