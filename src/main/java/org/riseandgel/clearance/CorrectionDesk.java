package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.clearance.ledger.Histories;
import org.riseandgel.clearance.ledger.Ledger;
import org.riseandgel.clearance.rule.Body;
import org.riseandgel.clearance.rule.Corrections;
import org.riseandgel.clearance.rule.Event;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Keeping;
import org.riseandgel.clearance.rule.Note;
import org.riseandgel.clearance.rule.Setting;

/**
 * Corrections: a new line that names the wrong one. The wrong one stays as it is. One person asks, another one confirms,
 * each signed in for themselves.
 */
@ApplicationScoped
public class CorrectionDesk {
    private static final UUID NOBODY_YET = new UUID(0, 0);

    private final Scribe scribe;
    private final Ledger ledger;

    CorrectionDesk(Scribe scribe, Ledger ledger) {
        this.scribe = scribe;
        this.ledger = ledger;
    }

    /** A correction that waits for somebody to confirm it. */
    public record Waiting(UUID id, Instant at, Keeping.CorrectionAsked said) {}

    /** Whether such a line can be corrected at all. */
    public static boolean mayCorrect(Body said) {
        return said != null && !(said instanceof Evidence.AgeSeen) && Corrections.mayFall(said);
    }

    /** Whether the time of such a line may be put right; where the time is part of more, the line is annulled instead. */
    public static boolean mayMove(Body said) {
        return said instanceof Evidence && !isBoundToItsTime(said)
                || said instanceof Setting.QualificationGiven
                || said instanceof Setting.DeltaAsked
                || said instanceof Setting.SdsFiled;
    }

    /** Why somebody may not correct a line at all; empty when they may. */
    public Optional<String> hindrance(UUID by, Event wrong) {
        return problem(by, NOBODY_YET, wrong, null, null);
    }

    /** The line with this id as the rule reads it. */
    public Optional<Event> event(UUID id) {
        return Histories.events(ledger.lines(Set.of(id))).stream().findFirst();
    }

    /**
     * Asks for a correction.
     *
     * @param when when it really happened; null when it did not happen
     */
    @Transactional
    public UUID ask(UUID by, UUID wrong, Instant when, String reason) {
        scribe.needStaff(by);
        Instant at = scribe.now();
        Event event = existing(wrong);
        if (open().stream().anyMatch(one -> one.said().event().equals(wrong))) {
            throw RegisterProblem.with("reason", "A correction of this line waits already.");
        }
        if (when != null && !mayMove(event.body())) {
            throw RegisterProblem.with(
                    "what", "The time of such a line is not moved; annul it, and write down what really happened.");
        }
        Body right = when == null ? null : event.body();
        check(by, NOBODY_YET, event, when, right, at);
        UUID about = event.body().subject().orElse(null);
        Note note = scribe.note(about, "reason", reason);
        return scribe.write(by, at, new Keeping.CorrectionAsked(about, wrong, by, when, right, note))
                .id();
    }

    /** Confirms what another has asked for; from then on the rule reads the line as corrected. */
    @Transactional
    public UUID confirm(UUID confirming, UUID asked) {
        scribe.needStaff(confirming);
        Instant at = scribe.now();
        Keeping.CorrectionAsked said = waiting(asked).said();
        Event event = existing(said.event());
        check(said.by(), confirming, event, said.effective(), said.replacement(), at);
        return scribe.write(
                        confirming,
                        at,
                        new Keeping.Corrected(
                                said.event(),
                                said.by(),
                                confirming,
                                said.effective(),
                                said.replacement(),
                                said.reason()))
                .id();
    }

    /** Leaves the line as it is. Whoever has asked may take it back like this. */
    @Transactional
    public UUID decline(UUID declining, UUID asked, String reason) {
        scribe.needStaff(declining);
        Instant at = scribe.now();
        UUID about = waiting(asked).said().person();
        if (declining.equals(about)) {
            throw RegisterProblem.with("reason", "Nobody corrects or confirms what is about themselves.");
        }
        return scribe.write(
                        declining,
                        at,
                        new Keeping.CorrectionDeclined(about, asked, declining, scribe.note(about, "reason", reason)))
                .id();
    }

    /** The corrections that wait, oldest first. */
    public List<Waiting> open() {
        List<Event> events = Histories.events(ledger.ofKinds("correction-asked", "correction-declined", "corrected"));
        Set<UUID> declined = new HashSet<>();
        for (Event event : events) {
            if (event.body() instanceof Keeping.CorrectionDeclined said) {
                declined.add(said.asked());
            }
        }
        return events.stream()
                .filter(event -> event.body() instanceof Keeping.CorrectionAsked && !declined.contains(event.id()))
                .filter(event -> events.stream().noneMatch(later -> isMade(event, later)))
                .map(event -> new Waiting(event.id(), event.recorded(), (Keeping.CorrectionAsked) event.body()))
                .toList();
    }

    /** Corrects in one go, where both people are at hand. */
    @Transactional
    UUID correct(UUID by, UUID confirmedBy, UUID wrong, Instant when, Body right, String reason) {
        scribe.needStaff(by);
        scribe.needStaff(confirmedBy);
        Instant at = scribe.now();
        Event event = existing(wrong);
        check(by, confirmedBy, event, when, right, at);
        UUID about = event.body().subject().orElse(null);
        return scribe.write(
                        by,
                        at,
                        new Keeping.Corrected(
                                wrong, by, confirmedBy, when, right, scribe.note(about, "reason", reason)))
                .id();
    }

    private static void check(UUID by, UUID confirmedBy, Event wrong, Instant when, Body right, Instant now) {
        if (when != null && when.isAfter(now)) {
            throw RegisterProblem.with("when", "This has not happened yet; give a time that has passed.");
        }
        if (right instanceof Evidence.ObservationRecorded seen
                        && !seen.endedAt().equals(when)
                || right instanceof Evidence.SittingNoted sitting
                        && !sitting.handedInAt().equals(when)) {
            throw RegisterProblem.with("when", "Give the instant at which it ended; the line has that time.");
        }
        problem(by, confirmedBy, wrong, when, right).ifPresent(CorrectionDesk::refuse);
    }

    private static Optional<String> problem(UUID by, UUID confirmedBy, Event wrong, Instant when, Body right) {
        return wrong.body() instanceof Evidence.AgeSeen
                ? Optional.of("A wrong date of birth is put right by entering the right one.")
                : Corrections.problem(new Keeping.Corrected(wrong.id(), by, confirmedBy, when, right, null), wrong);
    }

    private static void refuse(String why) {
        throw RegisterProblem.with("reason", why);
    }

    /** Those where the time stands in the line once more. */
    private static boolean isBoundToItsTime(Body said) {
        return said instanceof Evidence.SittingNoted
                || said instanceof Evidence.ObservationRecorded
                || said instanceof Evidence.EarlierTraining
                || said instanceof Evidence.AgeSeen;
    }

    private static boolean isMade(Event asked, Event later) {
        return later.number() > asked.number()
                && later.body() instanceof Keeping.Corrected made
                && Objects.equals(made.event(), ((Keeping.CorrectionAsked) asked.body()).event());
    }

    private Waiting waiting(UUID asked) {
        return open().stream()
                .filter(one -> one.id().equals(asked))
                .findFirst()
                .orElseThrow(() -> RegisterProblem.with("reason", "No such correction waits any more."));
    }

    private Event existing(UUID id) {
        return event(id).orElseThrow(() -> RegisterProblem.with("reason", "There is no such line."));
    }
}
