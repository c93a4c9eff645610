package org.riseandgel.clearance.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.clearance.rule.Ages;
import org.riseandgel.platform.sql.Sql;

/**
 * Dates of birth, which the program's own login may add and not read: it is told whether somebody is of age on a day, and
 * the date itself only for a safety lead, who is written down as having asked.
 */
@ApplicationScoped
public class BirthDates {
    private final Sql sql;
    private final Salts salts;

    BirthDates(Sql sql, Salts salts) {
        this.sql = sql;
        this.salts = salts;
    }

    /**
     * A date that is about to be kept.
     *
     * @param commitment what goes into the register instead of the date
     */
    public record Sealed(LocalDate born, String salt, String commitment) {}

    /** Makes what proves a date without telling it. */
    public Sealed seal(LocalDate born) {
        String salt = salts.next();
        return new Sealed(born, salt, Seal.ofText(salt, born.toString()));
    }

    /** Keeps a date for a line of the register. */
    public void keep(UUID event, UUID person, Sealed date, Instant recorded) {
        sql.change(
                """
                INSERT INTO birth_date (event_id, person_id, born, salt, recorded)
                VALUES (?, ?, ?, decode(?, 'hex'), ?)""",
                event,
                person,
                date.born(),
                date.salt(),
                recorded);
    }

    /** Ages as they were known at an instant; each question is asked of the database once. */
    public Ages known(Instant at) {
        return new RememberedAges((person, day) -> sql.first(
                        "SELECT age_on(?, ?, ?) AS age", row -> Ages.Age.valueOf(row.text("age")), person, day, at)
                .orElse(Ages.Age.UNKNOWN));
    }

    /** The date, for a safety lead; refused by the database to everybody else. */
    public Optional<LocalDate> forSafetyLead(UUID asking, UUID person, Instant at) {
        return sql.list(
                        "SELECT birth_date_for(?, ?, ?) AS born",
                        row -> Optional.ofNullable(row.date("born")),
                        asking,
                        person,
                        at)
                .get(0);
    }
}
