package org.riseandgel.progress;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.riseandgel.platform.sql.Sql;

/** Words that were given to people who needed one. By SQL: entries are only added, and the latest of each is asked for. */
@ApplicationScoped
class WordsGiven {
    private final Sql sql;
    private final Clock clock;

    WordsGiven(Sql sql, Clock clock) {
        this.sql = sql;
        this.clock = clock;
    }

    /** A word that was given. */
    record Given(UUID person, String skill, String why, String note, UUID by, Instant at) {}

    /** The latest word given to each of these people on each skill. */
    List<Given> latest(Collection<UUID> people) {
        return sql.list(
                """
                SELECT DISTINCT ON (person_id, skill) person_id, skill, why, note, given_by, given_at
                FROM word_given WHERE person_id = ANY(?::uuid[]) ORDER BY person_id, skill, given_at DESC, id""",
                row -> new Given(
                        row.uuid("person_id"),
                        row.text("skill"),
                        row.text("why"),
                        row.text("note"),
                        row.uuid("given_by"),
                        row.instant("given_at")),
                (Object) people.stream().map(UUID::toString).toArray(String[]::new));
    }

    /** All words given to a person, the latest first. */
    List<Given> to(UUID person) {
        return sql.list(
                """
                SELECT person_id, skill, why, note, given_by, given_at
                FROM word_given WHERE person_id = ? ORDER BY given_at DESC, id""",
                row -> new Given(
                        row.uuid("person_id"),
                        row.text("skill"),
                        row.text("why"),
                        row.text("note"),
                        row.uuid("given_by"),
                        row.instant("given_at")),
                person);
    }

    void add(UUID person, String skill, String why, String note, UUID by) {
        sql.change(
                """
                INSERT INTO word_given (id, person_id, skill, why, note, given_by, given_at)
                VALUES (?, ?, ?, ?, ?, ?, ?)""",
                UUID.randomUUID(),
                person,
                skill,
                why,
                note,
                by,
                clock.instant().truncatedTo(ChronoUnit.MICROS));
    }
}
