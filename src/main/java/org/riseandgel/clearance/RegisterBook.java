package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.clearance.ledger.ExportFile;
import org.riseandgel.clearance.ledger.Histories;
import org.riseandgel.clearance.ledger.Ledger;
import org.riseandgel.clearance.ledger.Seal;
import org.riseandgel.clearance.ledger.Verification;
import org.riseandgel.clearance.rule.ClearanceRule;
import org.riseandgel.clearance.rule.Standing;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.sql.Sql;

/** The book of the register as a whole: carried out as a file, checked, and compared with the answers that are kept. */
@ApplicationScoped
public class RegisterBook {
    private final Ledger ledger;
    private final Histories histories;
    private final Answers answers;
    private final Scribe scribe;
    private final AuditLog audit;
    private final Sql sql;

    RegisterBook(Ledger ledger, Histories histories, Answers answers, Scribe scribe, AuditLog audit, Sql sql) {
        this.ledger = ledger;
        this.histories = histories;
        this.answers = answers;
        this.scribe = scribe;
        this.audit = audit;
        this.sql = sql;
    }

    /** A file that leaves. */
    public record Export(String text, String sha256) {}

    /** The lines as a file; who took it is written down. */
    @Transactional
    public Export export(UUID actor) {
        scribe.needKeeper(actor);
        String text = ExportFile.write(ledger.all());
        String sha256 = Seal.of(text.getBytes(StandardCharsets.UTF_8));
        audit.note(actor, "register-exported", "register", sha256);
        return new Export(text, sha256);
    }

    /** Checks places, links, hashes and texts of all lines. */
    public Verification.Report verify() {
        return Verification.of(ledger.all());
    }

    /** Checks the text of an export, of this register or of another. */
    public Verification.Report verifyFile(String text) {
        return Verification.ofFile(text);
    }

    /** A kept answer that is not what the lines say. */
    public record Difference(UUID person, UUID place, String task, Standing kept, Standing worked) {}

    /** Compares every kept answer with what the rule makes of the lines now. */
    @Transactional
    public List<Difference> compare() {
        Instant at = scribe.now();
        Histories.Known known = histories.all(at);
        ClearanceRule rule = new ClearanceRule(known.history());
        Map<UUID, Place> places = new HashMap<>();
        known.history().openScopes(at).stream().map(Place::of).forEach(place -> places.put(place.id(), place));
        List<Difference> differences = new ArrayList<>();
        for (Answers.Kept kept : answers.all()) {
            Optional<Standing> now = kept.at(at);
            Place place = places.get(kept.place());
            Standing worked =
                    place == null ? null : rule.standing(place.question(kept.person(), Task.valueOf(kept.task())), at);
            if (place != null && now.isPresent() && !now.get().equals(worked)) {
                differences.add(new Difference(kept.person(), kept.place(), kept.task(), now.get(), worked));
            }
        }
        return differences;
    }

    /** The file of a safety data sheet. */
    public record SheetFile(String name, String mediaType, byte[] content) {}

    /** The file with this hash. */
    public Optional<SheetFile> sheetFile(String sha256) {
        return sql.first(
                "SELECT name, media_type, encode(content, 'base64') AS content FROM sds_file WHERE sha256 = ?",
                row -> new SheetFile(
                        row.text("name"),
                        row.text("media_type"),
                        java.util.Base64.getMimeDecoder().decode(row.text("content"))),
                sha256);
    }

    /** A question that was asked at a door. */
    public record Asked(
            long number,
            Instant at,
            UUID askedBy,
            UUID person,
            UUID place,
            String task,
            String status,
            String reason) {}

    /** The questions about somebody, newest first. */
    public List<Asked> asked(UUID person, int most) {
        return asked(person, 0, most);
    }

    /**
     * The questions, newest first.
     *
     * @param person only those about somebody; null for all
     * @param before only those with a smaller number; 0 for all
     */
    public List<Asked> asked(UUID person, long before, int most) {
        return sql.list(
                """
                SELECT id, at, asked_by, person_id, place_id, task, status, reason FROM register_check
                WHERE (?::uuid IS NULL OR person_id = ?::uuid) AND (? <= 0 OR id < ?)
                ORDER BY id DESC LIMIT ?""",
                row -> new Asked(
                        row.longNumber("id"),
                        row.instant("at"),
                        row.uuid("asked_by"),
                        row.uuid("person_id"),
                        row.uuid("place_id"),
                        row.text("task"),
                        row.text("status"),
                        row.text("reason")),
                person,
                person,
                before,
                before,
                most);
    }

    /** The place with this id among those that scopes in use have. */
    public Optional<Place> place(UUID id) {
        Instant now = scribe.latest();
        return histories.of(Set.of(), now).history().openScopes(now).stream()
                .map(Place::of)
                .filter(place -> place.id().equals(id))
                .findFirst();
    }
}
