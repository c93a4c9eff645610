package org.riseandgel.account.signin;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.account.password.OneTimePassword;
import org.riseandgel.account.password.Passwords;
import org.riseandgel.platform.sql.Row;
import org.riseandgel.platform.sql.Sql;

/** What is stored to prove who somebody is. */
@ApplicationScoped
public class Credentials {
    private static final String COLUMNS =
            "SELECT id, sign_in_name, password_hash, must_change, one_time_until, disabled_at FROM person";

    private final Sql sql;
    private final Passwords passwords;
    private final Clock clock;

    Credentials(Sql sql, Passwords passwords, Clock clock) {
        this.sql = sql;
        this.passwords = passwords;
        this.clock = clock;
    }

    /** The stored proof of one person. */
    record Credential(
            UUID person, String signInName, String hash, boolean mustChange, Instant until, boolean disabled) {
        boolean isUsable(Instant now) {
            return !disabled && (until == null || now.isBefore(until));
        }
    }

    Optional<Credential> byName(String signInName) {
        return sql.first(COLUMNS + " WHERE sign_in_name = ?", Credentials::read, signInName);
    }

    Optional<Credential> of(UUID person) {
        return sql.first(COLUMNS + " WHERE id = ?", Credentials::read, person);
    }

    /** Stores a password that the person chose; a one-time password is spent with it. */
    void choose(UUID person, String password) {
        sql.change(
                "UPDATE person SET password_hash = ?, must_change = false, one_time_until = NULL WHERE id = ?",
                passwords.hash(password),
                person);
    }

    /** Stores the same password with today's rounds. */
    void renew(UUID person, String password) {
        sql.change("UPDATE person SET password_hash = ? WHERE id = ?", passwords.hash(password), person);
    }

    /** Gives a person a new one-time password and returns it; it is kept nowhere else. */
    public String giveOneTime(UUID person) {
        String password = OneTimePassword.make();
        sql.change(
                "UPDATE person SET password_hash = ?, must_change = true, one_time_until = ? WHERE id = ?",
                passwords.hashOneTime(password),
                clock.instant().plus(OneTimePassword.LASTS),
                person);
        return password;
    }

    private static Credential read(Row row) throws SQLException {
        return new Credential(
                row.uuid("id"),
                row.text("sign_in_name"),
                row.text("password_hash"),
                row.flag("must_change"),
                row.instant("one_time_until"),
                row.instant("disabled_at") != null);
    }
}
