package org.riseandgel.account;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.UUID;
import org.riseandgel.account.password.Passwords;
import org.riseandgel.platform.sql.Sql;
import org.riseandgel.platform.web.Secret;

/** People who have left: the account is shut and the name goes; the row stays, since other records name its id. */
@ApplicationScoped
public class Leavers {
    private final Sql sql;
    private final Passwords passwords;

    Leavers(Sql sql, Passwords passwords) {
        this.sql = sql;
        this.passwords = passwords;
    }

    /** Takes the name off somebody and shuts the account for good. */
    @Transactional(Transactional.TxType.MANDATORY)
    public void anonymise(UUID person, Instant now) {
        String mark = person.toString().replace("-", "").substring(20);
        sql.change(
                """
                UPDATE person SET display_name = ?, sign_in_name = ?, password_hash = ?, must_change = true,
                       one_time_until = NULL, disabled_at = coalesce(disabled_at, ?)
                WHERE id = ?""",
                "Former member " + mark,
                "left-" + mark,
                passwords.hashOneTime(Secret.make()),
                now,
                person);
        sql.change(
                "UPDATE sign_in SET ended_at = ?, end_reason = 'disabled' WHERE person_id = ? AND ended_at IS NULL",
                now,
                person);
    }
}
