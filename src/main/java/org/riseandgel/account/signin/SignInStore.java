package org.riseandgel.account.signin;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.platform.sql.Row;
import org.riseandgel.platform.sql.Sql;

/** The table of sign-ins. */
@ApplicationScoped
class SignInStore {
    private final Sql sql;

    SignInStore(Sql sql) {
        this.sql = sql;
    }

    void add(byte[] idHash, UUID person, Instant now, String address, String browser) {
        sql.change(
                """
                INSERT INTO sign_in (id_hash, public_id, person_id, created_at, last_seen_at, ends_at, address, browser)
                VALUES (?, ?, ?, ?, ?, ?, ?, ?)
                """,
                idHash,
                UUID.randomUUID(),
                person,
                now,
                now,
                now.plus(SignIn.ABSOLUTE),
                address,
                browser);
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
                SignInStore::signIn,
                idHash);
    }

    void seen(byte[] idHash, Instant now) {
        sql.change("UPDATE sign_in SET last_seen_at = ? WHERE id_hash = ? AND last_seen_at < ?", now, idHash, now);
    }

    void end(byte[] idHash, EndReason reason, Instant now) {
        sql.change(
                "UPDATE sign_in SET ended_at = ?, end_reason = ? WHERE id_hash = ? AND ended_at IS NULL",
                now,
                reason.word(),
                idHash);
    }

    int endAllOf(UUID person, EndReason reason, Instant now) {
        return sql.change(
                "UPDATE sign_in SET ended_at = ?, end_reason = ? WHERE person_id = ? AND ended_at IS NULL",
                now,
                reason.word(),
                person);
    }

    int endOthersOf(UUID person, UUID kept, EndReason reason, Instant now) {
        return sql.change(
                """
                UPDATE sign_in SET ended_at = ?, end_reason = ?
                WHERE person_id = ? AND public_id <> ? AND ended_at IS NULL
                """,
                now,
                reason.word(),
                person,
                kept);
    }

    int endOne(UUID person, UUID publicId, EndReason reason, Instant now) {
        return sql.change(
                """
                UPDATE sign_in SET ended_at = ?, end_reason = ?
                WHERE person_id = ? AND public_id = ? AND ended_at IS NULL
                """,
                now,
                reason.word(),
                person,
                publicId);
    }

    List<OwnSignIn> openOf(UUID person, Instant now) {
        return sql.list(
                """
                SELECT public_id, created_at, last_seen_at, address, browser FROM sign_in
                WHERE person_id = ? AND ended_at IS NULL AND ends_at > ? AND last_seen_at > ?
                ORDER BY last_seen_at DESC
                """,
                SignInStore::own,
                person,
                now,
                now.minus(SignIn.IDLE));
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

    private static OwnSignIn own(Row row) throws SQLException {
        return new OwnSignIn(
                row.uuid("public_id"),
                row.instant("created_at"),
                row.instant("last_seen_at"),
                row.text("address"),
                row.text("browser"));
    }
}
