package org.riseandgel.platform.audit;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.riseandgel.platform.sql.Sql;
import org.riseandgel.platform.web.Caller;

/** Who did what to whom, when and from where. Entries are added in the transaction of the act and never changed. */
@ApplicationScoped
public class AuditLog {
    private final Sql sql;
    private final Clock clock;
    private final Caller caller;

    AuditLog(Sql sql, Clock clock, Caller caller) {
        this.sql = sql;
        this.clock = clock;
        this.caller = caller;
    }

    /** An entry as it is read back. */
    public record Entry(UUID actor, String action, String subject, String detail) {}

    /**
     * Adds an entry.
     *
     * @param actor who did it; null when nobody is signed in
     * @param action a fixed word such as {@code person-disabled}
     * @param subject what it was done to, by id
     * @param detail more, without secrets; line breaks and other control characters become spaces
     */
    public void note(UUID actor, String action, String subject, String detail) {
        sql.change(
                "INSERT INTO audit_entry (id, at, actor, action, subject, detail, address) VALUES (?, ?, ?, ?, ?, ?, ?)",
                UUID.randomUUID(),
                clock.instant(),
                actor,
                action,
                oneLine(subject),
                oneLine(detail),
                caller.address());
    }

    /** The newest entries about a subject, newest first. */
    public List<Entry> about(String subject, int most) {
        return sql.list(
                "SELECT actor, action, subject, detail FROM audit_entry WHERE subject = ? ORDER BY at DESC LIMIT ?",
                row -> new Entry(row.uuid("actor"), row.text("action"), row.text("subject"), row.text("detail")),
                subject,
                most);
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\p{Cntrl}", " ");
    }
}
