package org.riseandgel.account.token;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.sql.Row;
import org.riseandgel.platform.sql.Sql;
import org.riseandgel.platform.web.Secret;

/**
 * Access tokens: made by a person for a program of theirs, shown once, ended at any time. Each use is noted. A token is
 * asked of the database at every request, so that ending it, or disabling its person, works at once on every node.
 */
@ApplicationScoped
class AccessTokens {
    /** Looks a token up and notes its use, in one journey. */
    private static final String USE =
            """
            WITH found AS (
                SELECT t.id, t.scopes, p.id AS person_id, p.display_name,
                       ARRAY(SELECT role FROM person_role r WHERE r.person_id = p.id) AS roles
                FROM access_token t JOIN person p ON p.id = t.person_id
                WHERE t.id_hash = ? AND t.revoked_at IS NULL AND t.ends_at > ?
                    AND p.disabled_at IS NULL AND NOT p.must_change),
            noted AS (
                INSERT INTO access_token_use (token_id, at, method, path, address)
                SELECT id, ?, ?, left(?, 200), ? FROM found)
            SELECT * FROM found""";

    private static final String OPEN =
            """
            SELECT t.id, t.name, t.scopes, t.created_at, t.ends_at,
                   (SELECT max(at) FROM access_token_use u WHERE u.token_id = t.id) AS last_used,
                   (SELECT count(*) FROM access_token_use u WHERE u.token_id = t.id) AS uses
            FROM access_token t
            WHERE t.person_id = ? AND t.revoked_at IS NULL AND t.ends_at > ?
            ORDER BY t.created_at DESC, t.id""";

    private final Sql sql;
    private final AuditLog audit;
    private final Clock clock;

    AccessTokens(Sql sql, AuditLog audit, Clock clock) {
        this.sql = sql;
        this.audit = audit;
        this.clock = clock;
    }

    /** Whoever is behind a token, and what the token may be used for. */
    record Bearer(UUID person, String displayName, Set<String> roles, Set<TokenScope> scopes) {}

    /** A token that works, as its person sees it; {@code lastUsed} is null before the first use. */
    record Line(
            UUID id,
            String name,
            List<TokenScope> scopes,
            Instant createdAt,
            Instant endsAt,
            Instant lastUsed,
            long uses) {}

    /** A use of a token. */
    record Use(Instant at, String method, String path, String address) {}

    /** Makes a token and returns it, for the one time that it can be shown. */
    @Transactional
    String make(UUID person, String name, List<TokenScope> scopes, Duration lasting) {
        String token = Secret.make();
        UUID id = UUID.randomUUID();
        Instant now = clock.instant();
        String[] ids = scopes.stream().map(TokenScope::id).toArray(String[]::new);
        sql.change(
                """
                INSERT INTO access_token (id, id_hash, person_id, name, scopes, created_at, ends_at)
                VALUES (?, ?, ?, ?, ?, ?, ?)""",
                id,
                Secret.hash(token),
                person,
                name,
                ids,
                now,
                now.plus(lasting));
        audit.note(person, "access-token-made", id.toString(), name + ": " + String.join(", ", ids));
        return token;
    }

    /** Ends a token; false when that person has no such token. */
    @Transactional
    boolean revoke(UUID person, UUID id) {
        boolean ended = sql.change(
                        "UPDATE access_token SET revoked_at = ? WHERE id = ? AND person_id = ? AND revoked_at IS NULL",
                        clock.instant(),
                        id,
                        person)
                == 1;
        if (ended) {
            audit.note(person, "access-token-ended", id.toString(), "");
        }
        return ended;
    }

    /** The tokens of a person that work now. */
    List<Line> of(UUID person) {
        return sql.list(OPEN, AccessTokens::line, person, clock.instant());
    }

    /** The latest uses of a token of that person. */
    List<Use> uses(UUID person, UUID id, int most) {
        return sql.list(
                """
                SELECT u.at, u.method, u.path, u.address
                FROM access_token_use u JOIN access_token t ON t.id = u.token_id
                WHERE t.id = ? AND t.person_id = ? ORDER BY u.at DESC, u.id DESC LIMIT ?""",
                row -> new Use(row.instant("at"), row.text("method"), row.text("path"), row.text("address")),
                id,
                person,
                most);
    }

    /** Whoever is behind the token of a request; empty when it opens nothing. */
    Optional<Bearer> use(TokenRequest request) {
        if (!Secret.isPossible(request.token())) {
            return Optional.empty();
        }
        Instant now = clock.instant();
        return sql.first(
                USE,
                AccessTokens::bearer,
                Secret.hash(request.token()),
                now,
                now,
                request.method(),
                request.path(),
                request.address());
    }

    private static Bearer bearer(Row row) throws SQLException {
        return new Bearer(
                row.uuid("person_id"),
                row.text("display_name"),
                Set.copyOf(row.texts("roles")),
                scopes(row).collect(Collectors.toSet()));
    }

    private static Line line(Row row) throws SQLException {
        return new Line(
                row.uuid("id"),
                row.text("name"),
                scopes(row).toList(),
                row.instant("created_at"),
                row.instant("ends_at"),
                row.instant("last_used"),
                row.longNumber("uses"));
    }

    private static java.util.stream.Stream<TokenScope> scopes(Row row) throws SQLException {
        return row.texts("scopes").stream().map(TokenScope::byId).flatMap(Optional::stream);
    }
}
