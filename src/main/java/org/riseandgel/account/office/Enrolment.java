package org.riseandgel.account.office;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import org.riseandgel.account.store.CohortEntity;
import org.riseandgel.account.store.CohortMemberRepository;
import org.riseandgel.account.store.CohortRepository;
import org.riseandgel.account.store.PersonEntity;
import org.riseandgel.account.store.PersonRepository;
import org.riseandgel.platform.sql.Sql;

/**
 * Writes people, their roles and their cohorts into the tables. Runs in the caller's transaction, in which they are there
 * at once, also for SQL that is sent past the entities.
 */
@ApplicationScoped
public class Enrolment {
    private final PersonRepository persons;
    private final CohortRepository cohorts;
    private final CohortMemberRepository members;
    private final Sql sql;
    private final Clock clock;

    Enrolment(
            PersonRepository persons, CohortRepository cohorts, CohortMemberRepository members, Sql sql, Clock clock) {
        this.persons = persons;
        this.cohorts = cohorts;
        this.members = members;
        this.sql = sql;
        this.clock = clock;
    }

    /** Part of somebody in a cohort. */
    public enum Part {
        LEARNS("learns"),
        TEACHES("teaches");

        private final String word;

        Part(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * A person to be written.
     *
     * @param until until when a one-time password works; null for a password that stays
     * @param by who adds this person; null for the first one
     */
    public record NewPerson(
            UUID id,
            String signInName,
            String displayName,
            String passwordHash,
            Instant until,
            Collection<String> roles,
            UUID by) {}

    /** Adds people; a sign-in name that is taken is refused by the database. */
    public void add(List<NewPerson> people) {
        Instant now = clock.instant();
        List<PersonEntity> added = people.stream().map(p -> entity(p, now)).toList();
        persons.persist(added);
        persons.flush();
        // Nobody changes them any more in this transaction, and every later query would look thousands through.
        added.forEach(persons.getEntityManager()::detach);
    }

    /** Adds a cohort; a name that is taken is refused by the database. */
    public void addCohort(UUID id, String name) {
        cohorts.persistAndFlush(new CohortEntity(id, name, clock.instant()));
    }

    /** Lets a person learn or teach in a cohort from now on; nothing happens if that is so already. */
    public boolean join(UUID cohort, UUID person, Part part) {
        return join(cohort, person, part, clock.instant());
    }

    /** Lets a person learn or teach in a cohort since a moment that is past. */
    public boolean join(UUID cohort, UUID person, Part part, Instant since) {
        return members.join(cohort, person, part.word(), since);
    }

    /** Somebody's part in a cohort. */
    public record Membership(UUID cohort, UUID person, Part part) {}

    /** Lets many people join at once, in one statement; who is in already stays in once. */
    public void joinAll(List<Membership> joining) {
        sql.change(
                """
                INSERT INTO cohort_member (id, cohort_id, person_id, part, joined_at)
                SELECT gen_random_uuid(), m.cohort, m.person, m.part, ?
                FROM unnest(?::uuid[], ?::uuid[], ?::text[]) AS m (cohort, person, part)
                ON CONFLICT DO NOTHING""",
                clock.instant(),
                texts(joining, one -> one.cohort().toString()),
                texts(joining, one -> one.person().toString()),
                texts(joining, one -> one.part().word()));
    }

    private static String[] texts(List<Membership> joining, Function<Membership, String> text) {
        return joining.stream().map(text).toArray(String[]::new);
    }

    /** Ends a membership now; its past stays. */
    public boolean leave(UUID cohort, UUID person, Part part) {
        return members.leave(cohort, person, part.word(), clock.instant());
    }

    /** Closes a cohort now or opens it again; false when it is so already. */
    public boolean close(UUID cohort, boolean closed) {
        return cohorts.close(cohort, closed ? clock.instant() : null);
    }

    private static PersonEntity entity(NewPerson p, Instant now) {
        PersonEntity person = new PersonEntity(p.id(), p.signInName(), p.displayName(), now, p.by());
        if (p.until() == null) {
            person.takePassword(p.passwordHash());
        } else {
            person.takeOneTimePassword(p.passwordHash(), p.until());
        }
        person.haveRoles(p.roles());
        return person;
    }
}
