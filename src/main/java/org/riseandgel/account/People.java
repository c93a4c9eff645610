package org.riseandgel.account;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.platform.sql.Row;
import org.riseandgel.platform.sql.Sql;

/** The school's people and cohorts, for every feature to read. Only memberships that last now count. */
@ApplicationScoped
public class People {
    private static final String PERSON =
            """
            SELECT p.id, p.sign_in_name, p.display_name, p.disabled_at, p.created_at,
                   ARRAY(SELECT r.role FROM person_role r WHERE r.person_id = p.id) AS roles
            FROM person p
            """;
    private static final String COHORT =
            """
            SELECT c.id, c.name,
                   (SELECT count(*) FROM cohort_member l
                    WHERE l.cohort_id = c.id AND l.part = 'learns' AND l.left_at IS NULL) AS learners
            FROM cohort c
            """;

    private final Sql sql;

    People(Sql sql) {
        this.sql = sql;
    }

    /** The person with this id, also when disabled. */
    public Optional<PersonView> find(UUID person) {
        return sql.first(PERSON + "WHERE p.id = ?", People::person, person);
    }

    /** The open cohorts that this person teaches, by name. */
    public List<CohortView> cohortsTaughtBy(UUID instructor) {
        return sql.list(
                COHORT
                        + """
                        WHERE c.closed_at IS NULL AND EXISTS (SELECT 1 FROM cohort_member m
                            WHERE m.cohort_id = c.id AND m.person_id = ? AND m.part = 'teaches' AND m.left_at IS NULL)
                        ORDER BY lower(c.name)
                        """,
                People::cohort,
                instructor);
    }

    /** All open cohorts, by name. */
    public List<CohortView> allCohorts() {
        return sql.list(COHORT + "WHERE c.closed_at IS NULL ORDER BY lower(c.name)", People::cohort);
    }

    /** The cohort with this id. */
    public Optional<CohortView> cohort(UUID cohort) {
        return sql.first(COHORT + "WHERE c.id = ?", People::cohort, cohort);
    }

    /** Those who learn in a cohort now, by name; disabled people are left out. */
    public List<PersonView> learnersOf(UUID cohort) {
        return sql.list(
                PERSON
                        + """
                        JOIN cohort_member m ON m.person_id = p.id
                        WHERE m.cohort_id = ? AND m.part = 'learns' AND m.left_at IS NULL AND p.disabled_at IS NULL
                        ORDER BY lower(p.display_name), p.id
                        """,
                People::person,
                cohort);
    }

    /** Whether this person teaches a cohort in which the other one learns now. */
    public boolean teaches(UUID instructor, UUID learner) {
        return sql.any(
                """
                SELECT 1 FROM cohort_member t JOIN cohort_member l ON l.cohort_id = t.cohort_id
                    JOIN cohort c ON c.id = t.cohort_id
                WHERE t.person_id = ? AND t.part = 'teaches' AND t.left_at IS NULL
                  AND l.person_id = ? AND l.part = 'learns' AND l.left_at IS NULL AND c.closed_at IS NULL
                LIMIT 1
                """,
                instructor,
                learner);
    }

    private static PersonView person(Row row) throws SQLException {
        return new PersonView(
                row.uuid("id"),
                row.text("sign_in_name"),
                row.text("display_name"),
                Set.copyOf(row.texts("roles")),
                row.instant("disabled_at"),
                row.instant("created_at"));
    }

    private static CohortView cohort(Row row) throws SQLException {
        return new CohortView(row.uuid("id"), row.text("name"), row.number("learners"));
    }
}
