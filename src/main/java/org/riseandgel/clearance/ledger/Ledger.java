package org.riseandgel.clearance.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.riseandgel.clearance.rule.Body;
import org.riseandgel.clearance.rule.Event;
import org.riseandgel.platform.sql.Row;
import org.riseandgel.platform.sql.Sql;

/**
 * The lines of the register in the database. One is added at a time, in the transaction of what it is about; the database
 * checks place and hashes once more and refuses every change. By SQL, because the table has no rows that change.
 */
@ApplicationScoped
public class Ledger {
    /** The lock that whoever adds a line holds until the transaction ends; the database's own trigger takes it too. */
    static final long LOCK = 7_103_001;

    private static final String COLUMNS =
            """
            SELECT number, id, recorded, content, encode(salt, 'hex') AS salt,
                   encode(content_hash, 'hex') AS content_hash, encode(previous, 'hex') AS previous,
                   encode(hash, 'hex') AS hash
            FROM register_event
            """;

    private final Sql sql;
    private final Salts salts;
    private final Clock clock;

    Ledger(Sql sql, Salts salts, Clock clock) {
        this.sql = sql;
        this.salts = salts;
        this.clock = clock;
    }

    /** Where the register stands: its newest line. */
    public record Head(long number, String hash, Instant recorded) {
        static final Head NONE = new Head(0, Seal.BEGINNING, Instant.EPOCH);
    }

    /**
     * Waits until nobody else is adding, and lets nobody else add until the transaction ends. What is read after this is
     * what the next line is added to.
     */
    @Transactional(Transactional.TxType.MANDATORY)
    public Head hold() {
        sql.any("SELECT pg_advisory_xact_lock(?)", LOCK);
        return head();
    }

    /** Waits until nobody is adding and lets nobody add until the transaction ends; others may read like this too. */
    @Transactional(Transactional.TxType.MANDATORY)
    public void holdStill() {
        sql.any("SELECT pg_advisory_xact_lock_shared(?)", LOCK);
    }

    /** The newest line. */
    public Head head() {
        return sql.first(COLUMNS + "ORDER BY number DESC LIMIT 1", Ledger::line)
                .map(line -> new Head(line.number(), line.hash(), line.recorded()))
                .orElse(Head.NONE);
    }

    /** Whether the newest line bears a later time than the clock: it is behind, or it was ahead and was set back. */
    public boolean isAhead() {
        Instant newest = head().recorded();
        return newest.isAfter(clock.instant());
    }

    /** The time of the next line: now, and never before the newest one. */
    @Transactional(Transactional.TxType.MANDATORY)
    public Instant now() {
        return later(clock.instant().truncatedTo(ChronoUnit.MICROS), hold().recorded());
    }

    /**
     * Adds a line.
     *
     * @param by who writes it down; null when the program does
     * @param effective when it happened, not after now
     */
    @Transactional(Transactional.TxType.MANDATORY)
    public Event add(UUID by, Instant effective, Body said) {
        Head head = hold();
        return insert(head, by, effective, later(clock.instant(), head.recorded()), said);
    }

    /**
     * Adds a line as if it had been written down when it happened: the demo school has an invented past.
     *
     * @throws IllegalStateException when this is not the demo school
     */
    @Transactional(Transactional.TxType.MANDATORY)
    public Event addInvented(UUID by, Instant then, Body said) {
        if (!sql.any("SELECT 1 FROM school WHERE demo")) {
            throw new IllegalStateException("only the demo school has an invented past");
        }
        return insert(hold(), by, then, then, said);
    }

    private Event insert(Head head, UUID by, Instant effective, Instant recorded, Body said) {
        Event event = new Event(
                head.number() + 1,
                UUID.randomUUID(),
                effective.truncatedTo(ChronoUnit.MICROS),
                recorded.truncatedTo(ChronoUnit.MICROS),
                by,
                said);
        String content = EventText.write(new EventText.Content(by, event.effective(), said));
        String salt = salts.next();
        String contentHash = Seal.ofText(salt, content);
        sql.change(
                """
                INSERT INTO register_event
                    (number, id, effective, recorded, content, salt, content_hash, previous, hash)
                VALUES (?, ?, ?, ?, ?, decode(?, 'hex'), decode(?, 'hex'), decode(?, 'hex'), decode(?, 'hex'))""",
                event.number(),
                event.id(),
                event.effective(),
                event.recorded(),
                content,
                salt,
                contentHash,
                head.hash(),
                Seal.ofLine(event.number(), event.id(), event.recorded(), contentHash, head.hash()));
        return event;
    }

    /** All lines, in order. */
    public List<Line> all() {
        return sql.list(COLUMNS + "ORDER BY number", Ledger::line);
    }

    /** A stretch of the lines, in order. */
    public List<Line> after(long number, int most) {
        return sql.list(COLUMNS + "WHERE number > ? ORDER BY number LIMIT ?", Ledger::line, number, most);
    }

    /** The lines that concern nobody alone, in order. */
    public List<Line> general() {
        return sql.list(COLUMNS + "WHERE person_id IS NULL ORDER BY number", Ledger::line);
    }

    /** The lines about some people, in order. */
    public List<Line> about(Collection<UUID> people) {
        return sql.list(COLUMNS + "WHERE person_id = ANY (?::uuid[]) ORDER BY number", Ledger::line, (Object)
                people.stream().map(UUID::toString).toArray(String[]::new));
    }

    /** The lines with these ids, in order. */
    public List<Line> lines(Collection<UUID> ids) {
        return ids.isEmpty()
                ? List.of()
                : sql.list(COLUMNS + "WHERE id = ANY (?::uuid[]) ORDER BY number", Ledger::line, (Object)
                        ids.stream().map(UUID::toString).toArray(String[]::new));
    }

    /** The lines of some kinds, in order. */
    public List<Line> ofKinds(String... kinds) {
        return sql.list(COLUMNS + "WHERE kind = ANY (?) ORDER BY number", Ledger::line, (Object) kinds);
    }

    /** The lines that correct a line about somebody, in order. */
    public List<Line> correctionsAbout(Collection<UUID> people) {
        return sql.list(
                COLUMNS
                        + """
                        WHERE kind = 'corrected' AND (content::jsonb -> 'said' ->> 'event')::uuid IN
                            (SELECT e.id FROM register_event e WHERE e.person_id = ANY (?::uuid[]))
                        ORDER BY number""",
                Ledger::line,
                (Object) people.stream().map(UUID::toString).toArray(String[]::new));
    }

    /** Which of these lines a later line corrects. */
    public Set<UUID> correctedAmong(Collection<UUID> ids) {
        return ids.isEmpty()
                ? Set.of()
                : Set.copyOf(sql.list(
                        """
                        SELECT DISTINCT (content::jsonb -> 'said' ->> 'event')::uuid AS corrected
                        FROM register_event
                        WHERE kind = 'corrected' AND (content::jsonb -> 'said' ->> 'event')::uuid = ANY (?::uuid[])""",
                        row -> row.uuid("corrected"),
                        (Object) texts(ids)));
    }

    /**
     * Which lines are looked for; null and empty leave a condition out.
     *
     * @param about only lines about one of these people
     * @param by only lines that one of these people wrote down
     * @param kind only lines of a kind
     * @param words only lines with a free text in which these words stand
     * @param from only lines recorded then or later
     * @param until only lines recorded before then
     * @param before only lines with a smaller number; 0 for all
     */
    public record Sought(
            Collection<UUID> about,
            Collection<UUID> by,
            String kind,
            String words,
            Instant from,
            Instant until,
            long before) {
        /** Every line. */
        public static final Sought ALL = new Sought(null, null, null, null, null, null, 0);
    }

    /** The newest lines that fit, newest first. */
    public List<Line> search(Sought sought, int most) {
        StringBuilder where = new StringBuilder("WHERE true\n");
        List<Object> values = new ArrayList<>();
        given(sought.about(), "AND person_id = ANY (?::uuid[])\n", where, values, Ledger::texts);
        given(sought.by(), "AND (content::jsonb ->> 'by')::uuid = ANY (?::uuid[])\n", where, values, Ledger::texts);
        given(sought.kind(), "AND kind = ?\n", where, values, kind -> kind);
        given(
                sought.words(),
                """
                AND EXISTS (SELECT 1 FROM register_note n
                            WHERE n.words ILIKE ? ESCAPE '!' AND strpos(content, n.id::text) > 0
                              AND (n.person_id IS NOT DISTINCT FROM register_event.person_id OR kind = 'corrected'))
                """,
                where,
                values,
                words -> "%" + words.replace("!", "!!").replace("%", "!%").replace("_", "!_") + "%");
        given(sought.from(), "AND recorded >= ?\n", where, values, from -> from);
        given(sought.until(), "AND recorded < ?\n", where, values, until -> until);
        given(sought.before() > 0 ? sought.before() : null, "AND number < ?\n", where, values, number -> number);
        values.add(most);
        return sql.list(COLUMNS + where + "ORDER BY number DESC LIMIT ?", Ledger::line, values.toArray());
    }

    private static <T> void given(
            T value, String condition, StringBuilder where, List<Object> values, Function<T, Object> bound) {
        if (value != null) {
            where.append(condition);
            values.add(bound.apply(value));
        }
    }

    private static String[] texts(Collection<UUID> ids) {
        return ids.stream().map(UUID::toString).toArray(String[]::new);
    }

    /** Everybody the register says something about. */
    public List<UUID> people() {
        return sql.list(
                "SELECT DISTINCT person_id FROM register_event WHERE person_id IS NOT NULL ORDER BY person_id",
                row -> row.uuid("person_id"));
    }

    private static Line line(Row row) throws SQLException {
        return new Line(
                row.longNumber("number"),
                row.uuid("id"),
                row.instant("recorded"),
                row.text("content"),
                row.text("salt"),
                row.text("content_hash"),
                row.text("previous"),
                row.text("hash"));
    }

    private static Instant later(Instant one, Instant other) {
        return one.isBefore(other) ? other : one;
    }
}
