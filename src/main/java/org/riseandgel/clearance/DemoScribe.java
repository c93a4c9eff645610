package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.UUID;
import org.riseandgel.clearance.ledger.BirthDates;
import org.riseandgel.clearance.ledger.Histories;
import org.riseandgel.clearance.ledger.Ledger;
import org.riseandgel.clearance.ledger.Notes;
import org.riseandgel.clearance.ledger.Seal;
import org.riseandgel.clearance.rule.Body;
import org.riseandgel.clearance.rule.ClearanceRule;
import org.riseandgel.clearance.rule.Event;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Note;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.sql.Sql;

/** Writes the invented past of the demo school into the register, as if it had been written down at the time. */
@ApplicationScoped
class DemoScribe {
    private final Ledger ledger;
    private final Notes notes;
    private final BirthDates births;
    private final Histories histories;
    private final SchoolSettings school;
    private final Sql sql;

    DemoScribe(Ledger ledger, Notes notes, BirthDates births, Histories histories, SchoolSettings school, Sql sql) {
        this.ledger = ledger;
        this.notes = notes;
        this.births = births;
        this.histories = histories;
        this.school = school;
        this.sql = sql;
    }

    Event write(UUID by, Instant at, Body said) {
        return ledger.addInvented(by, at, said);
    }

    Note note(UUID about, String words, Instant at) {
        return notes.keep(about, words, at);
    }

    void born(UUID by, UUID person, LocalDate day, Instant at) {
        BirthDates.Sealed sealed = births.seal(day);
        Event event = write(by, at, new Evidence.AgeSeen(person, by, sealed.commitment()));
        births.keep(event.id(), person, sealed, event.recorded());
    }

    /** Keeps a file and says its hash. */
    String file(String name, byte[] content, Instant at) {
        String sha256 = Seal.of(content);
        sql.change(
                """
                INSERT INTO sds_file (sha256, name, media_type, content, filed_at) VALUES (?, ?, 'text/plain', ?, ?)
                ON CONFLICT (sha256) DO NOTHING""",
                sha256,
                name,
                content,
                at);
        return sha256;
    }

    ClearanceRule rule(UUID person, UUID decider, Instant at) {
        return new ClearanceRule(
                histories.of(java.util.Set.of(person, decider), at).history());
    }

    ZoneId zone() {
        return school.zone();
    }
}
