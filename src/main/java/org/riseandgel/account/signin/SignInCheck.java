package org.riseandgel.account.signin;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import org.riseandgel.platform.sql.Row;
import org.riseandgel.platform.sql.Sql;

/**
 * The check of a sign-in behind the cookie. Plain SQL: it runs before there is a request for a session to belong to, for
 * every page that memory does not answer, and must stay one statement over three tables.
 */
@ApplicationScoped
class SignInCheck {
    private final Sql sql;

    SignInCheck(Sql sql) {
        this.sql = sql;
    }

    /** The sign-in with this id unless it was ended or its person was disabled. */
    Optional<SignIn> find(byte[] idHash) {
        return sql.first(
                """
                SELECT s.public_id, s.person_id, s.last_seen_at, s.ends_at, p.display_name, p.must_change,
                       ARRAY(SELECT role FROM person_role r WHERE r.person_id = p.id) AS roles
                FROM sign_in s JOIN person p ON p.id = s.person_id
                WHERE s.id_hash = ? AND s.ended_at IS NULL AND p.disabled_at IS NULL
                """,
                SignInCheck::signIn,
                idHash);
    }

    /** Notes that the person was seen, unless a later request has. */
    void seen(byte[] idHash, Instant now) {
        sql.change("UPDATE sign_in SET last_seen_at = ? WHERE id_hash = ? AND last_seen_at < ?", now, idHash, now);
    }

    private static SignIn signIn(Row row) throws SQLException {
        return new SignIn(
                row.uuid("public_id"),
                row.uuid("person_id"),
                row.text("display_name"),
                Set.copyOf(row.texts("roles")),
                row.flag("must_change"),
                row.instant("last_seen_at"),
                row.instant("ends_at"));
    }
}
