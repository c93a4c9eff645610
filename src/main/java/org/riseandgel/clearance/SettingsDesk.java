package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.clearance.ledger.Histories;
import org.riseandgel.clearance.ledger.Seal;
import org.riseandgel.clearance.policy.PolicyFile;
import org.riseandgel.clearance.policy.PolicyReader;
import org.riseandgel.clearance.rule.Act;
import org.riseandgel.clearance.rule.DeltaKind;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Policy;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Setting;
import org.riseandgel.clearance.rule.Substance;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.platform.sql.Sql;
import org.riseandgel.platform.web.Problem;

/** What the school lays down: policy, scopes, safety data sheets, who may train, observe and decide. */
@ApplicationScoped
public class SettingsDesk {
    private static final int LARGEST_SHEET = 10 * 1024 * 1024;
    private static final int LAST_SECTION = 16;

    private final Scribe scribe;
    private final PolicyFile file;
    private final WhatIf whatIf;
    private final Sql sql;

    SettingsDesk(Scribe scribe, PolicyFile file, WhatIf whatIf, Sql sql) {
        this.scribe = scribe;
        this.file = file;
        this.whatIf = whatIf;
        this.sql = sql;
    }

    /**
     * Puts the policy of the file in force. Every clearance that it would no longer grant is to be renewed by the day that
     * the policy gives, and is not cleared after it.
     *
     * @return whose clearances these are
     */
    @Transactional
    public List<WhatIf.NoLonger> putPolicyInForce(UUID actor) {
        scribe.needSafetyLead(actor);
        PolicyReader.Read read = file.read();
        Policy policy = read.policy()
                .orElseThrow(() -> new RegisterProblem(read.problems().stream()
                        .map(problem -> new Problem("policy", problem.toString()))
                        .toList()));
        Instant at = scribe.now();
        Histories.Known known = scribe.all();
        if (known.history().policy(at).filter(policy::equals).isPresent()) {
            throw RegisterProblem.with("policy", "This policy is in force already.");
        }
        List<WhatIf.NoLonger> fallen = whatIf.of(known, policy, at);
        scribe.write(actor, at, new Setting.PolicyInForce(policy));
        for (WhatIf.NoLonger one : fallen) {
            scribe.write(actor, at, new Setting.RenewalAsked(one.person(), one.grant(), one.due(), policy.version()));
        }
        return fallen;
    }

    /** Defines a scope. A respirator is needed where the policy says so; the school may ask for one elsewhere too. */
    @Transactional
    public UUID defineScope(
            UUID actor,
            String title,
            Substance substance,
            Form form,
            Set<Task> tasks,
            String room,
            boolean respirator) {
        scribe.needSafetyLead(actor);
        Instant at = scribe.now();
        Histories.Known known = scribe.known();
        try {
            boolean needed = respirator
                    || known.history()
                            .policy(at)
                            .filter(policy -> policy.needsRespirator(form, tasks))
                            .isPresent();
            Scope scope = new Scope(UUID.randomUUID(), title, substance, form, tasks, room, needed);
            scribe.write(actor, at, new Setting.ScopeDefined(scope));
            return scope.id();
        } catch (IllegalArgumentException e) {
            throw RegisterProblem.with("scope", e.getMessage());
        }
    }

    /** Closes a scope; nobody is cleared in it any more. */
    @Transactional
    public void closeScope(UUID actor, UUID scope, String reason) {
        scribe.needSafetyLead(actor);
        Instant at = scribe.now();
        Histories.Known known = scribe.known();
        if (known.history().openScopes(at).stream().noneMatch(open -> open.id().equals(scope))) {
            throw RegisterProblem.with("scope", "Choose a scope that is in use.");
        }
        scribe.write(actor, at, new Setting.ScopeClosed(scope, actor, scribe.note(null, "reason", reason)));
    }

    /**
     * A revision of a safety data sheet.
     *
     * @param sectionsChanged numbers of the sections that differ from the revision before
     * @param deltaDue last day for the training of those who are cleared; null for the policy's number of days
     */
    public record Sheet(
            Substance substance,
            String label,
            LocalDate dated,
            String fileName,
            String mediaType,
            byte[] content,
            Set<Integer> sectionsChanged,
            LocalDate deltaDue) {}

    /** Files a revision of a sheet with its file. */
    @Transactional
    public UUID fileSheet(UUID actor, Sheet sheet) {
        scribe.needSafetyLead(actor);
        Instant at = scribe.now();
        Histories.Known known = scribe.known();
        LocalDate today = known.history().days().of(at);
        checkSheet(sheet, today);
        String sha256 = Seal.of(sheet.content());
        sql.change(
                """
                INSERT INTO sds_file (sha256, name, media_type, content, filed_at) VALUES (?, ?, ?, ?, ?)
                ON CONFLICT (sha256) DO NOTHING""",
                sha256,
                sheet.fileName(),
                sheet.mediaType(),
                sheet.content(),
                at);
        LocalDate due = Optional.ofNullable(sheet.deltaDue())
                .orElseGet(() -> today.plusDays(known.history()
                        .policy(at)
                        .map(policy -> policy.periods().deltaDueDays())
                        .orElse(0)));
        UUID revision = UUID.randomUUID();
        scribe.write(
                actor,
                at,
                new Setting.SdsFiled(
                        revision,
                        sheet.substance(),
                        sheet.label().strip(),
                        sheet.dated(),
                        sha256,
                        sheet.sectionsChanged(),
                        due));
        return revision;
    }

    /** Gives a qualification: a safety lead or the office does, and nobody to themselves. */
    @Transactional
    public void qualify(UUID actor, UUID person, Act act, LocalDate through, String basis) {
        scribe.needKeeper(actor);
        scribe.needPerson(person, "person");
        if (actor.equals(person)) {
            throw RegisterProblem.with(
                    "person", "Nobody qualifies themselves; another safety lead or the office does it.");
        }
        Instant at = scribe.now();
        EvidenceDesk.needFuture(through, scribe.known().history().days().of(at), "through");
        if (act == null) {
            throw RegisterProblem.with("act", "Choose training, observing or deciding.");
        }
        scribe.write(
                actor,
                at,
                new Setting.QualificationGiven(person, act, through, actor, scribe.note(person, "basis", basis)));
    }

    /** Ends a qualification before its day. */
    @Transactional
    public void endQualification(UUID actor, UUID person, Act act, boolean forCause, String reason) {
        scribe.needStaff(actor);
        scribe.needPerson(person, "person");
        scribe.write(
                actor,
                scribe.now(),
                new Setting.QualificationEnded(person, act, forCause, actor, scribe.note(person, "reason", reason)));
    }

    /**
     * Asks for a delta training.
     *
     * @param person who needs it; null for everybody who is cleared
     * @param scope for which scope; null for every one
     * @param due last day; null for the policy's number of days
     */
    @Transactional
    public UUID askDelta(UUID actor, UUID person, UUID scope, DeltaKind kind, LocalDate due, String what) {
        scribe.needStaff(actor);
        Instant at = scribe.now();
        Histories.Known known = scribe.known();
        if (person != null) {
            scribe.needPerson(person, "person");
        }
        if (scope != null) {
            EvidenceDesk.needScope(known, scope);
        }
        if (kind == null) {
            throw RegisterProblem.with("kind", "Choose what changed.");
        }
        LocalDate today = known.history().days().of(at);
        LocalDate last = Optional.ofNullable(due)
                .orElseGet(() -> today.plusDays(known.history()
                        .policy(at)
                        .map(policy -> policy.periods().deltaDueDays())
                        .orElse(0)));
        EvidenceDesk.needFuture(last, today, "due");
        return scribe.write(
                        actor, at, new Setting.DeltaAsked(person, scope, kind, last, scribe.note(person, "what", what)))
                .id();
    }

    private static void checkSheet(Sheet sheet, LocalDate today) {
        if (sheet.content() == null || sheet.content().length == 0 || sheet.content().length > LARGEST_SHEET) {
            throw RegisterProblem.with("file", "Choose the supplier's file, at most 10 MB.");
        }
        if (sheet.label() == null || sheet.label().isBlank() || sheet.label().length() > 80) {
            throw RegisterProblem.with("label", "Write the revision as the sheet names it, such as 4.1.");
        }
        if (sheet.dated() == null || sheet.dated().isAfter(today)) {
            throw RegisterProblem.with("dated", "Give the day that the sheet itself bears.");
        }
        if (sheet.fileName() == null
                || sheet.fileName().isBlank()
                || sheet.fileName().length() > 200) {
            throw RegisterProblem.with("file", "The file's name is missing or longer than 200 characters.");
        }
        if (sheet.sectionsChanged().stream().anyMatch(section -> section < 1 || section > LAST_SECTION)) {
            throw RegisterProblem.with("sections", "A safety data sheet has sections 1 to 16.");
        }
        if (sheet.deltaDue() != null) {
            EvidenceDesk.needFuture(sheet.deltaDue(), today, "due");
        }
    }
}
