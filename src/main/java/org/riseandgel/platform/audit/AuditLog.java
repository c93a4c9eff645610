package org.riseandgel.platform.audit;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.riseandgel.platform.web.Caller;

/** Who did what to whom, when and from where. Entries are added in the transaction of the act and never changed. */
@ApplicationScoped
public class AuditLog {
    private final AuditRepository entries;
    private final Clock clock;
    private final Caller caller;

    AuditLog(AuditRepository entries, Clock clock, Caller caller) {
        this.entries = entries;
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
    @Transactional
    public void note(UUID actor, String action, String subject, String detail) {
        Entry entry = new Entry(actor, action, oneLine(subject), oneLine(detail));
        entries.persist(new AuditEntity(entry, clock.instant(), caller.address()));
    }

    /** The newest entries about a subject, newest first. */
    public List<Entry> about(String subject, int most) {
        return entries.find("subject = ?1 order by notedAt desc", subject).page(0, most).list().stream()
                .map(AuditEntity::view)
                .toList();
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\p{Cntrl}", " ");
    }
}
