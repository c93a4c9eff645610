package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.account.People;
import org.riseandgel.clearance.ledger.BirthDates;
import org.riseandgel.clearance.ledger.Histories;
import org.riseandgel.clearance.rule.Act;
import org.riseandgel.clearance.rule.ClearanceRule;
import org.riseandgel.clearance.rule.Decision;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Fact;
import org.riseandgel.clearance.rule.History;
import org.riseandgel.clearance.rule.Keeping;
import org.riseandgel.clearance.rule.Need;
import org.riseandgel.clearance.rule.Policy;
import org.riseandgel.clearance.rule.Proposal;
import org.riseandgel.clearance.rule.Question;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Setting;
import org.riseandgel.clearance.rule.Standing;
import org.riseandgel.clearance.rule.Status;
import org.riseandgel.clearance.rule.Substance;

/** The register as it is read: who is cleared for what at an instant, as known at an instant. Changes nothing. */
@ApplicationScoped
public class Register {
    private static final UUID NOBODY = new UUID(0, 0);

    private final Histories histories;
    private final Scribe scribe;
    private final BirthDates births;
    private final KnowledgeEvidence knowledge;
    private final People people;

    Register(Histories histories, Scribe scribe, BirthDates births, KnowledgeEvidence knowledge, People people) {
        this.histories = histories;
        this.scribe = scribe;
        this.births = births;
        this.knowledge = knowledge;
        this.people = people;
    }

    /** How far somebody is in a scope. Expired, suspended and the like are in the standing. */
    public enum Stage {
        IN_TRAINING,
        KNOWLEDGE_PASSED,
        OBSERVED,
        DECIDED
    }

    /**
     * One person in one scope.
     *
     * @param validThrough the last day of the clearance; null when there is none
     */
    public record BoardRow(
            UUID person, String name, Scope scope, Stage stage, Standing standing, LocalDate validThrough) {}

    /**
     * Who stands where in all scopes.
     *
     * @param at the instant that is asked about
     * @param known as known at
     * @param readable false when the register cannot be read; then nobody is cleared
     */
    public record Board(Instant at, Instant known, boolean readable, List<Scope> scopes, List<BoardRow> rows) {}

    /**
     * The board at an instant, as it was known at another; both are now when left out. Of now nothing can be said while the
     * clock is behind. Who was anonymised by then is not on it.
     */
    public Board board(Instant at, Instant known) {
        Instant now = scribe.latest();
        if (at == null && scribe.isClockBehind()) {
            return new Board(now, now, false, List.of(), List.of());
        }
        Instant when = at == null ? now : at;
        Instant knew = known == null ? now : known;
        History history = histories.all(knew).history();
        ClearanceRule rule = new ClearanceRule(history);
        List<Scope> scopes = history.openScopes(when);
        Map<UUID, String> names = people.names(history.people());
        List<BoardRow> rows = new ArrayList<>();
        for (Scope scope : scopes) {
            for (UUID person : history.people()) {
                if (!history.about(person, Keeping.Anonymised.class, when).isEmpty()) {
                    continue;
                }
                row(history, rule, scope, person, when)
                        .map(row -> new BoardRow(
                                person,
                                names.getOrDefault(person, "Unknown person"),
                                scope,
                                row.stage(),
                                row.standing(),
                                row.standing().validThrough()))
                        .ifPresent(rows::add);
            }
        }
        rows.sort(Comparator.comparing((BoardRow row) -> row.scope().title())
                .thenComparing(BoardRow::name)
                .thenComparing(BoardRow::person));
        return new Board(when, knew, history.isReadable(), scopes, List.copyOf(rows));
    }

    /**
     * A line of the door list.
     *
     * @param nextReview the day at which the answer is looked at again: when it would get worse if nothing happens
     */
    public record DoorLine(
            String name,
            String scope,
            Status status,
            LocalDate validThrough,
            LocalDate nextReview,
            boolean singleInstructor) {}

    /** Who may handle the salt today in a room: cleared or supervised only. */
    public record DoorList(String room, Instant printedAt, List<DoorLine> lines) {}

    /** The list for the door of a room, as of now. */
    public DoorList doorList(String room) {
        Instant now = scribe.latest();
        History history = histories.all(now).history();
        List<DoorLine> lines = board(null, now).rows().stream()
                .filter(row -> row.scope().room().equals(room))
                .filter(row -> row.standing().status() != Status.NOT_CLEARED)
                .map(row -> new DoorLine(
                        row.name(),
                        row.scope().title(),
                        row.standing().status(),
                        row.validThrough(),
                        Optional.ofNullable(row.standing().holdsUntil())
                                .map(until -> history.days().of(until.minusNanos(1)))
                                .orElse(row.validThrough()),
                        row.standing().singleInstructor()))
                .sorted(Comparator.comparing(DoorLine::name).thenComparing(DoorLine::scope))
                .toList();
        return new DoorList(room, now, lines);
    }

    /** What one person may do now, scope by scope; only the scopes in which something is on record. */
    public List<BoardRow> standings(UUID person) {
        Instant now = scribe.latest();
        boolean behind = scribe.isClockBehind();
        History history = scribe.known(person).history();
        ClearanceRule rule = new ClearanceRule(history);
        String name = people.names(Set.of(person)).getOrDefault(person, "Unknown person");
        return history.openScopes(now).stream()
                .flatMap(scope -> row(history, rule, scope, person, now).stream()
                        .map(row -> new BoardRow(
                                person,
                                name,
                                scope,
                                row.stage(),
                                behind ? Standing.none(Reason.UNREADABLE) : row.standing(),
                                behind ? null : row.standing().validThrough())))
                .toList();
    }

    /**
     * What will stand against a clearance if nothing happens before.
     *
     * @param lastDay the last day on which it still holds
     * @param reason what stands against it after that day
     */
    public record Coming(UUID person, Scope scope, LocalDate lastDay, Reason reason) {}

    /** What comes next against what somebody may do now, scope by scope. */
    public List<Coming> coming(UUID person) {
        Instant now = scribe.latest();
        List<Coming> coming = new ArrayList<>();
        if (scribe.isClockBehind()) {
            return coming;
        }
        History history = scribe.known(person).history();
        ClearanceRule rule = new ClearanceRule(history);
        for (Scope scope : history.openScopes(now)) {
            if (history.grant(person, scope.id(), now).isPresent()) {
                List<ClearanceRule.Piece> pieces = rule.timeline(Question.about(person, scope), now);
                if (pieces.size() > 1 && pieces.get(0).standing().status() != Status.NOT_CLEARED) {
                    ClearanceRule.Piece next = pieces.get(1);
                    next.standing()
                            .firstReason()
                            .map(reason -> new Coming(
                                    person, scope, history.days().of(next.from().minusNanos(1)), reason))
                            .ifPresent(coming::add);
                }
            }
        }
        return coming;
    }

    /** The scopes in use now. */
    public List<Scope> scopes() {
        return histories.of(Set.of(), scribe.latest()).history().openScopes(scribe.latest());
    }

    /** The policy in force now. */
    public Optional<Policy> policy() {
        return histories.of(Set.of(), scribe.latest()).history().policy(scribe.latest());
    }

    /** All revisions of safety data sheets, newest first. */
    public List<Fact<Setting.SdsFiled>> sheets() {
        List<Fact<Setting.SdsFiled>> sheets = new ArrayList<>(
                histories.of(Set.of(), scribe.latest()).history().general(Setting.SdsFiled.class, scribe.latest()));
        java.util.Collections.reverse(sheets);
        return sheets;
    }

    /** The newest revision of a substance's sheet. */
    public Optional<Setting.SdsFiled> sheet(Substance substance) {
        return histories
                .of(Set.of(), scribe.latest())
                .history()
                .sheet(substance, scribe.latest())
                .map(Fact::body);
    }

    /** Who read which revision of a sheet and when, as far as the register knows now. */
    public record Reading(UUID person, String name, UUID revision, Instant at) {}

    /** Everybody who read any revision, newest first. */
    public List<Reading> readings() {
        Instant now = scribe.latest();
        History history = histories.all(now).history();
        Map<UUID, String> names = people.names(history.people());
        return history.people().stream()
                .flatMap(person -> history.about(person, Evidence.SdsRead.class, now).stream())
                .map(f -> new Reading(
                        f.body().person(),
                        names.getOrDefault(f.body().person(), "Unknown person"),
                        f.body().revision(),
                        f.effective()))
                .sorted(Comparator.comparing(Reading::at).reversed())
                .toList();
    }

    /** Somebody who may train, observe or decide. */
    public record Qualified(UUID person, String name, Act act, LocalDate through) {}

    /** Everybody who is qualified now. */
    public List<Qualified> qualified() {
        Instant now = scribe.latest();
        History history = histories.all(now).history();
        ClearanceRule rule = new ClearanceRule(history);
        Map<UUID, String> names = people.names(history.people());
        List<Qualified> all = new ArrayList<>();
        for (UUID person : history.people()) {
            Map<Act, LocalDate> given = history.about(person, Setting.QualificationGiven.class, now).stream()
                    .collect(Collectors.toMap(f -> f.body().act(), f -> f.body().through(), (earlier, later) -> later));
            given.forEach((act, through) -> {
                if (rule.isQualified(person, act, now)) {
                    all.add(new Qualified(person, names.getOrDefault(person, "Unknown person"), act, through));
                }
            });
        }
        all.sort(Comparator.comparing(Qualified::name).thenComparing(Qualified::act));
        return all;
    }

    /** The date of birth, for a safety lead, who is written down as having asked. */
    @Transactional
    public Optional<LocalDate> birthDate(UUID asking, UUID person) {
        scribe.needSafetyLead(asking);
        return births.forSafetyLead(asking, person, scribe.latest());
    }

    private record Found(Stage stage, Standing standing) {}

    private Optional<Found> row(History history, ClearanceRule rule, Scope scope, UUID person, Instant at) {
        Standing standing = rule.standing(Question.about(person, scope), at);
        boolean granted = history.grant(person, scope.id(), at).isPresent();
        boolean begun = granted
                || !history.about(person, Evidence.ObservationRecorded.class, at).stream()
                        .filter(f -> f.body().scope().equals(scope.id()))
                        .toList()
                        .isEmpty()
                || history.about(person, Evidence.TrainingGiven.class, at).stream()
                        .anyMatch(f -> f.body().substance().equals(scope.substance()))
                || history.about(person, Decision.Suspended.class, at).stream()
                        .anyMatch(f -> scope.id().equals(f.body().scope()));
        return begun
                ? Optional.of(new Found(granted ? Stage.DECIDED : stage(history, rule, scope, person, at), standing))
                : Optional.empty();
    }

    private Stage stage(History history, ClearanceRule rule, Scope scope, UUID person, Instant at) {
        String pool = history.policy(at)
                .flatMap(policy -> knowledge.currentPool(policy.knowledge().check()))
                .orElse(null);
        List<Need> unmet = rule.mayGrant(new Proposal(person, scope.id(), NOBODY, pool, false), at)
                .unmet();
        if (unmet.contains(Need.KNOWLEDGE)) {
            return Stage.IN_TRAINING;
        }
        return unmet.contains(Need.OBSERVATION) ? Stage.KNOWLEDGE_PASSED : Stage.OBSERVED;
    }
}
