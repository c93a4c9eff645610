package org.riseandgel.account.office;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.account.Roles;
import org.riseandgel.platform.sql.Sql;

/** What the office looks up about people and cohorts. */
@ApplicationScoped
class Directory {
    /** More people than this are not listed at once; the search narrows them. */
    static final int MOST = 200;

    private final Sql sql;

    Directory(Sql sql) {
        this.sql = sql;
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
        String pattern = "%" + text.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_") + "%";
        return sql.list(
                """
                SELECT p.id, p.display_name, p.sign_in_name, p.disabled_at,
                       ARRAY(SELECT r.role FROM person_role r WHERE r.person_id = p.id ORDER BY r.role) AS roles
                FROM person p
                WHERE (p.display_name ILIKE ? OR p.sign_in_name ILIKE ?)
                  AND (? = '' OR EXISTS (SELECT 1 FROM person_role r WHERE r.person_id = p.id AND r.role = ?))
                  AND (? = '' OR ? = CASE WHEN p.disabled_at IS NULL THEN 'on' ELSE 'off' END)
                ORDER BY lower(p.display_name), p.id
                LIMIT ?
                """,
                row -> new Line(
                        row.uuid("id"),
                        row.text("display_name"),
                        row.text("sign_in_name"),
                        row.texts("roles"),
                        row.instant("disabled_at") != null),
                pattern,
                pattern,
                role,
                role,
                state,
                state,
                MOST + 1);
    }

    /** The cohorts of a person, by name. */
    List<Membership> cohortsOf(UUID person) {
        return sql.list(
                """
                SELECT c.id, c.name, '' AS sign_in_name, m.part FROM cohort_member m JOIN cohort c ON c.id = m.cohort_id
                WHERE m.person_id = ? AND m.left_at IS NULL ORDER BY lower(c.name), m.part
                """,
                row -> new Membership(row.uuid("id"), row.text("name"), "", row.text("part")),
                person);
    }

    /** The people of a cohort, instructors first. */
    List<Membership> membersOf(UUID cohort) {
        return sql.list(
                """
                SELECT p.id, p.display_name, p.sign_in_name, m.part
                FROM cohort_member m JOIN person p ON p.id = m.person_id
                WHERE m.cohort_id = ? AND m.left_at IS NULL ORDER BY m.part DESC, lower(p.display_name), p.id
                """,
                row -> new Membership(
                        row.uuid("id"), row.text("display_name"), row.text("sign_in_name"), row.text("part")),
                cohort);
    }

    /** The people with these sign-in names. */
    List<Found> withSignInNames(List<String> names) {
        return sql.list(
                """
                SELECT p.id, p.sign_in_name,
                       ARRAY(SELECT r.role FROM person_role r WHERE r.person_id = p.id) AS roles
                FROM person p WHERE p.sign_in_name = ANY (?)
                """,
                row -> new Found(row.uuid("id"), row.text("sign_in_name"), row.texts("roles")),
                (Object) names.toArray(String[]::new));
    }

    /** The cohort with this name, whatever its capitals. */
    Optional<UUID> cohortNamed(String name) {
        return sql.first("SELECT id FROM cohort WHERE lower(name) = lower(?)", row -> row.uuid("id"), name);
    }

    /** Whether another person who can sign in has the office role. Holds the school's row, so that two cannot leave. */
    boolean hasAnotherOffice(UUID person) {
        sql.first("SELECT id FROM school FOR UPDATE", row -> row.number("id"));
        return sql.any(
                """
                SELECT 1 FROM person p JOIN person_role r ON r.person_id = p.id
                WHERE r.role = ? AND p.disabled_at IS NULL AND p.id <> ? LIMIT 1
                """,
                Roles.OFFICE,
                person);
    }
}
