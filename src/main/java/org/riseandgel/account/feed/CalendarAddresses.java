package org.riseandgel.account.feed;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.sql.Sql;
import org.riseandgel.platform.web.Secret;

/** The secret address under which a calendar program reads a person's dates: one for each person, ended at any time. */
@ApplicationScoped
class CalendarAddresses {
    private final Sql sql;
    private final AuditLog audit;
    private final Clock clock;

    CalendarAddresses(Sql sql, AuditLog audit, Clock clock) {
        this.sql = sql;
        this.audit = audit;
        this.clock = clock;
    }

    /** Since when the person's address works; empty without one. */
    Optional<Instant> since(UUID person) {
        return sql.first(
                "SELECT created_at FROM calendar_address WHERE person_id = ? AND revoked_at IS NULL",
                row -> row.instant("created_at"),
                person);
    }

    /** Makes a fresh address in place of the one before, and returns its secret for the one time it can be shown. */
    @Transactional
    String renew(UUID person) {
        revoke(person);
        String secret = Secret.make();
        sql.change(
                "INSERT INTO calendar_address (id, id_hash, person_id, created_at) VALUES (?, ?, ?, ?)",
                UUID.randomUUID(),
                Secret.hash(secret),
                person,
                clock.instant());
        audit.note(person, "calendar-address-made", person.toString(), "");
        return secret;
    }

    /** Ends the person's address. */
    @Transactional
    void revoke(UUID person) {
        int ended = sql.change(
                "UPDATE calendar_address SET revoked_at = ? WHERE person_id = ? AND revoked_at IS NULL",
                clock.instant(),
                person);
        if (ended > 0) {
            audit.note(person, "calendar-address-ended", person.toString(), "");
        }
    }

    /** Whose dates are read under this secret; empty when it is unknown or ended, or the person is disabled. */
    Optional<UUID> person(String secret) {
        if (!Secret.isPossible(secret)) {
            return Optional.empty();
        }
        return sql.first(
                """
                SELECT c.person_id FROM calendar_address c JOIN person p ON p.id = c.person_id
                WHERE c.id_hash = ? AND c.revoked_at IS NULL AND p.disabled_at IS NULL""",
                row -> row.uuid("person_id"),
                Secret.hash(secret));
    }
}
