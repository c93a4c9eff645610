package org.riseandgel.account.signin;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalLong;
import org.riseandgel.platform.sql.Sql;

/**
 * Makes guessing slow without shutting anybody out: after a number of failed tries each further one has to wait 2, 4,
 * 8 … and at most 60 seconds. A try is counted before the password is looked at, so that many at once are no way
 * round. Tries made during a wait are refused and do not lengthen it.
 *
 * <p>A whole class may sit behind one address, so an address is given more tries than an account, and is forgiven after
 * a quiet quarter of an hour. After 100 failed tries in a row an account needs a new one-time password from the office
 * (NIST SP 800-63B-4 allows no more).
 *
 * <p>By SQL, because counting a try and deciding on it is one upsert, so that tries at once cannot overtake each other.
 */
@ApplicationScoped
public class Throttle {
    static final int FREE_PER_ACCOUNT = 5;
    static final int FREE_PER_ADDRESS = 30;
    static final int MOST_PER_ACCOUNT = 100;
    private static final Duration ADDRESS_FORGIVEN = Duration.ofMinutes(15);
    private static final Duration ACCOUNT_KEPT = Duration.ofDays(400);
    private static final long LONGEST_WAIT = 60;

    private final Sql sql;
    private final Clock clock;

    Throttle(Sql sql, Clock clock) {
        this.sql = sql;
        this.clock = clock;
    }

    /** Asks for a try. Empty: go on. Otherwise the seconds to wait; {@link Long#MAX_VALUE} until the office helps. */
    OptionalLong ask(String account, String address) {
        Instant now = clock.instant();
        OptionalLong addressWait = wait("address:" + address, FREE_PER_ADDRESS, now);
        if (addressWait.isPresent()) {
            return addressWait;
        }
        return take("account:" + account, now)
                ? OptionalLong.empty()
                : OptionalLong.of(waitOf("account:" + account, now));
    }

    /** Notes that the try went wrong. The account's own count already holds it. */
    void failed(String address) {
        Instant now = clock.instant();
        sql.change(
                "DELETE FROM sign_in_failure WHERE last_at < ? OR (last_at < ? AND subject LIKE 'address:%')",
                now.minus(ACCOUNT_KEPT), now.minus(ADDRESS_FORGIVEN));
        sql.change(
                """
                INSERT INTO sign_in_failure AS f (subject, failures, last_at) VALUES (?, 1, ?)
                ON CONFLICT (subject) DO UPDATE SET failures = f.failures + 1, last_at = excluded.last_at
                """,
                "address:" + address,
                now);
    }

    /** Forgets the failed tries of an account: the right password came, or the office gave a new one. */
    public void forget(String account) {
        sql.change("DELETE FROM sign_in_failure WHERE subject = ?", "account:" + account);
    }

    private boolean take(String subject, Instant now) {
        return sql.change(
                        """
                        INSERT INTO sign_in_failure AS f (subject, failures, last_at) VALUES (?, 1, ?)
                        ON CONFLICT (subject) DO UPDATE SET failures = f.failures + 1, last_at = excluded.last_at
                        WHERE f.failures < ? OR f.failures < ? AND (f.last_at > excluded.last_at + interval '1 minute' OR
                            f.last_at <= excluded.last_at
                                - least(?, power(2, least(f.failures - ?, 10))) * interval '1 second')
                        """,
                        subject,
                        now,
                        FREE_PER_ACCOUNT,
                        MOST_PER_ACCOUNT,
                        LONGEST_WAIT,
                        FREE_PER_ACCOUNT - 1)
                == 1;
    }

    private long waitOf(String account, Instant now) {
        boolean spent =
                sql.any("SELECT 1 FROM sign_in_failure WHERE subject = ? AND failures >= ?", account, MOST_PER_ACCOUNT);
        return spent ? Long.MAX_VALUE : wait(account, FREE_PER_ACCOUNT, now).orElse(1);
    }

    private OptionalLong wait(String subject, int free, Instant now) {
        return sql.first(
                        "SELECT failures, last_at FROM sign_in_failure WHERE subject = ? AND failures >= ?",
                        row -> seconds(row.number("failures") - free + 1, row.instant("last_at"), now),
                        subject,
                        free)
                .filter(seconds -> seconds > 0)
                .map(OptionalLong::of)
                .orElse(OptionalLong.empty());
    }

    /**
     * Seconds still to wait: 2 to the power of the failures beyond the free ones, at most 60, from the last one on. A clock
     * that was set back by more than that makes nobody wait.
     */
    static long seconds(int beyond, Instant last, Instant now) {
        long wait = beyond >= 6 ? LONGEST_WAIT : 1L << beyond;
        Duration left = Duration.between(now, last.plusSeconds(wait));
        return left.isNegative() || left.isZero() || last.isAfter(now)
                ? 0
                : left.plusMillis(999).toSeconds();
    }
}
