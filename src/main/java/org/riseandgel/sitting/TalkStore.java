package org.riseandgel.sitting;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.riseandgel.platform.sql.Sql;

/** Talks in the database: added and read, never changed. */
@ApplicationScoped
class TalkStore {
    private final Sql sql;

    TalkStore(Sql sql) {
        this.sql = sql;
    }

    /** A talk about a check: with whom, by whom, when and what was agreed. */
    record Talk(UUID id, UUID person, String check, UUID notedBy, Instant notedAt, String words) {}

    void add(Talk talk) {
        sql.change(
                """
                INSERT INTO sitting_talk (id, person_id, check_id, noted_by, noted_at, words)
                VALUES (?, ?, ?, ?, ?, ?)""",
                talk.id(),
                talk.person(),
                talk.check(),
                talk.notedBy(),
                talk.notedAt(),
                talk.words());
    }

    /** The talks with a person about one check, the latest first. */
    List<Talk> of(UUID person, String check) {
        return of(person).stream().filter(talk -> talk.check().equals(check)).toList();
    }

    /** All talks with a person, the latest first. */
    List<Talk> of(UUID person) {
        return sql.list(
                """
                SELECT id, person_id, check_id, noted_by, noted_at, words
                FROM sitting_talk WHERE person_id = ? ORDER BY noted_at DESC, id""",
                row -> new Talk(
                        row.uuid("id"),
                        row.uuid("person_id"),
                        row.text("check_id"),
                        row.uuid("noted_by"),
                        row.instant("noted_at"),
                        row.text("words")),
                person);
    }
}
