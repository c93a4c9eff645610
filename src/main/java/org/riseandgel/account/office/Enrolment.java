package org.riseandgel.account.office;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.riseandgel.platform.sql.Sql;

/** Writes people, their roles and their cohorts into the tables. Runs in the caller's transaction. */
@ApplicationScoped
public class Enrolment {
    private final Sql sql;
    private final Clock clock;

    Enrolment(Sql sql, Clock clock) {
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
        sql.changeEach(
                """
                INSERT INTO person (id, sign_in_name, display_name, password_hash, must_change, one_time_until,
                    created_at, created_by)
                VALUES (?, ?, ?, ?, ?, ?, ?, ?)
                """,
                people.stream().map(p -> values(p, now)).toList());
        sql.changeEach(
                "INSERT INTO person_role (person_id, role) VALUES (?, ?)",
                people.stream()
                        .flatMap(p -> p.roles().stream().map(role -> new Object[] {p.id(), role}))
                        .toList());
    }

    /** Adds a cohort. */
    public void addCohort(UUID id, String name) {
        sql.change("INSERT INTO cohort (id, name, created_at) VALUES (?, ?, ?)", id, name, clock.instant());
    }

    /** Lets a person learn or teach in a cohort from now on; nothing happens if that is so already. */
    public boolean join(UUID cohort, UUID person, Part part) {
        return sql.change(
                        """
                        INSERT INTO cohort_member (id, cohort_id, person_id, part, joined_at) VALUES (?, ?, ?, ?, ?)
                        ON CONFLICT (cohort_id, person_id, part) WHERE left_at IS NULL DO NOTHING
                        """,
                        UUID.randomUUID(),
                        cohort,
                        person,
                        part.word(),
                        clock.instant())
                == 1;
    }

    /** Ends a membership now; its past stays. */
    public boolean leave(UUID cohort, UUID person, Part part) {
        return sql.change(
                        """
                        UPDATE cohort_member SET left_at = greatest(joined_at, ?)
                        WHERE cohort_id = ? AND person_id = ? AND part = ? AND left_at IS NULL
                        """,
                        clock.instant(),
                        cohort,
                        person,
                        part.word())
                == 1;
    }

    private static Object[] values(NewPerson p, Instant now) {
        return new Object[] {
            p.id(), p.signInName(), p.displayName(), p.passwordHash(), p.until() != null, p.until(), now, p.by()
        };
    }
}
