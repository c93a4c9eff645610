package org.riseandgel.clearance.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.riseandgel.clearance.rule.Note;
import org.riseandgel.platform.sql.Sql;

/** Free texts of the register, kept beside the chain so that those of a leaver can be erased. */
@ApplicationScoped
public class Notes {
    /** The longest text. */
    public static final int LONGEST = 2_000;

    private final Sql sql;
    private final Salts salts;

    Notes(Sql sql, Salts salts) {
        this.sql = sql;
        this.salts = salts;
    }

    /**
     * Keeps a text.
     *
     * @param about whom it is about; null when it concerns nobody alone
     */
    public Note keep(UUID about, String words, Instant at) {
        String salt = salts.next();
        Note note = new Note(UUID.randomUUID(), Seal.ofText(salt, words));
        sql.change(
                """
                INSERT INTO register_note (id, person_id, written_at, commitment, salt, words)
                VALUES (?, ?, ?, ?, decode(?, 'hex'), ?)""",
                note.id(),
                about,
                at,
                note.commitment(),
                salt,
                words);
        return note;
    }

    /** The texts that are still there, by the id of the note. */
    public Map<UUID, String> texts(Collection<UUID> notes) {
        Map<UUID, String> texts = new LinkedHashMap<>();
        sql.list(
                        "SELECT id, words FROM register_note WHERE id = ANY (?::uuid[]) AND words IS NOT NULL",
                        row -> Map.entry(row.uuid("id"), row.text("words")),
                        (Object) notes.stream().map(UUID::toString).toArray(String[]::new))
                .forEach(entry -> texts.put(entry.getKey(), entry.getValue()));
        return texts;
    }
}
