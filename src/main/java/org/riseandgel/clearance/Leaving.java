package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.account.HeldPeople;
import org.riseandgel.account.Leavers;
import org.riseandgel.account.People;
import org.riseandgel.clearance.ledger.Histories;
import org.riseandgel.clearance.ledger.Ledger;
import org.riseandgel.clearance.ledger.Verification;
import org.riseandgel.clearance.rule.Act;
import org.riseandgel.clearance.rule.Body;
import org.riseandgel.clearance.rule.ClearanceRule;
import org.riseandgel.clearance.rule.Decision;
import org.riseandgel.clearance.rule.Event;
import org.riseandgel.clearance.rule.Fact;
import org.riseandgel.clearance.rule.Keeping;
import org.riseandgel.clearance.rule.Setting;
import org.riseandgel.platform.sql.Sql;

/**
 * What happens to the lines about people who have left: names and free texts are erased, later what the lines said too.
 * Places and hashes stay, and so does the chain.
 */
@ApplicationScoped
public class Leaving implements HeldPeople {
    private static final int LEAST_YEARS = 5;
    private static final String HAS_LEFT = "Has left the school.";

    private final Scribe scribe;
    private final Ledger ledger;
    private final Leavers leavers;
    private final People people;
    private final Sql sql;

    Leaving(Scribe scribe, Ledger ledger, Leavers leavers, People people, Sql sql) {
        this.scribe = scribe;
        this.ledger = ledger;
        this.leavers = leavers;
        this.people = people;
        this.sql = sql;
    }

    /** The person has left the school on a day; every clearance goes, and what the person was qualified for ends. */
    @Transactional
    public void end(UUID actor, UUID person, LocalDate on) {
        scribe.needKeeper(actor);
        scribe.needPerson(person, "person");
        Instant at = scribe.now();
        if (on == null || on.isAfter(scribe.known(person).history().days().of(at))) {
            throw RegisterProblem.with("on", "Give the last day; it has come.");
        }
        scribe.write(actor, at, new Keeping.RelationEnded(person, on));
        scribe.write(
                actor, at, new Decision.Withdrawn(person, null, actor, false, scribe.note(person, "reason", HAS_LEFT)));
        ClearanceRule rule = new ClearanceRule(scribe.known(person).history());
        for (Act act : Act.values()) {
            if (rule.isQualified(person, act, at)) {
                scribe.write(
                        actor,
                        at,
                        new Setting.QualificationEnded(
                                person, act, false, actor, scribe.note(person, "reason", HAS_LEFT)));
            }
        }
    }

    /** Lays a legal hold on somebody's lines, or lifts it. While it lies nothing is erased. */
    @Transactional
    public void hold(UUID actor, UUID person, boolean on, String reason) {
        scribe.needSafetyLead(actor);
        scribe.needPerson(person, "person");
        Instant at = scribe.now();
        scribe.write(actor, at, new Keeping.LegalHold(person, on, actor, scribe.note(person, "reason", reason)));
    }

    /** Erases name, sign-in, free texts and date of birth of somebody who has left. */
    @Transactional
    public int anonymise(UUID actor, UUID person) {
        scribe.needKeeper(actor);
        scribe.needPerson(person, "person");
        Instant at = scribe.now();
        Histories.Known known = scribe.known(person);
        if (left(known, person, at).isEmpty()) {
            throw RegisterProblem.with("person", "Write down first that the person has left.");
        }
        needNoHold(known, person, at);
        int notes = sql.first(
                        "SELECT count(*) AS notes FROM register_note WHERE person_id = ? AND words IS NOT NULL",
                        row -> row.number("notes"),
                        person)
                .orElse(0);
        scribe.write(actor, at, new Keeping.Anonymised(person, notes));
        int erased = sql.list("SELECT register_anonymise() AS notes", row -> row.number("notes"))
                .get(0);
        leavers.anonymise(person, at);
        return erased;
    }

    /**
     * Somebody who has left and about whom lines still say something.
     *
     * @param name as it is shown now; the invented one after anonymising
     * @param left the last day
     * @param anonymised whether name and free texts were erased
     * @param held whether a legal hold lies on the lines
     * @param keptThrough the last day on which the lines are kept; null while no policy says so
     * @param over whether that day is over and no hold lies on them
     */
    public record Leaver(
            UUID person,
            String name,
            LocalDate left,
            boolean anonymised,
            boolean held,
            LocalDate keptThrough,
            boolean over) {}

    /** Everybody who has left, by the day. */
    public List<Leaver> leavers() {
        Instant at = scribe.latest();
        Histories.Known known = scribe.all();
        Map<UUID, String> names = people.names(known.history().people());
        return known.history().people().stream()
                .flatMap(person -> left(known, person, at)
                        .map(on -> leaver(known, person, names.getOrDefault(person, "Unknown person"), on, at))
                        .stream())
                .sorted(Comparator.comparing(Leaver::left).thenComparing(Leaver::name))
                .toList();
    }

    @Override
    public Set<UUID> held() {
        Instant at = scribe.latest();
        Histories.Known known = scribe.all();
        return known.history().people().stream()
                .filter(person -> isHeld(known, person, at))
                .collect(Collectors.toSet());
    }

    /** For how many years lines are kept after the last day; empty while no policy says so. */
    public Optional<Integer> years() {
        return years(scribe.known(), scribe.latest());
    }

    /** Whose lines the policy no longer keeps; those on whom a legal hold lies are left out. */
    public List<UUID> due() {
        return leavers().stream().filter(Leaver::over).map(Leaver::person).toList();
    }

    /**
     * Erases what the lines said about those whose time is over. The purge is a line of its own with count and hash, without
     * names.
     *
     * @return how many lines were erased
     */
    @Transactional
    public int purge(UUID actor) {
        scribe.needSafetyLead(actor);
        Instant at = scribe.now();
        List<UUID> due = due();
        if (due.isEmpty()) {
            throw RegisterProblem.with("purge", "Nobody's time is over; nothing is erased.");
        }
        Map<Long, String> hashes = new HashMap<>();
        ledger.about(due).forEach(line -> hashes.put(line.number(), line.hash()));
        ledger.correctionsAbout(due).forEach(line -> hashes.put(line.number(), line.hash()));
        Set<Long> numbers = new HashSet<>(hashes.keySet());
        scribe.write(actor, at, new Keeping.Purged(numbers.size(), numbers, Verification.digest(numbers, hashes)));
        return sql.list("SELECT register_purge() AS lines", row -> row.number("lines"))
                .get(0);
    }

    private static Leaver leaver(Histories.Known known, UUID person, String name, LocalDate left, Instant at) {
        LocalDate from = lastOwnLine(known, person)
                .map(recorded -> known.history().days().of(recorded))
                .filter(day -> day.isAfter(left))
                .orElse(left);
        boolean held = isHeld(known, person, at);
        LocalDate through = years(known, at).map(from::plusYears).orElse(null);
        return new Leaver(
                person,
                name,
                left,
                !known.history().about(person, Keeping.Anonymised.class, at).isEmpty(),
                held,
                through,
                !held
                        && through != null
                        && through.isBefore(known.history().days().of(at)));
    }

    private static Optional<Integer> years(Histories.Known known, Instant at) {
        return known.history()
                .policy(at)
                .map(policy -> Math.max(LEAST_YEARS, policy.periods().retentionYears()));
    }

    /** The newest line about somebody that is not about their leaving; a correction of such a line is one too. */
    private static Optional<Instant> lastOwnLine(Histories.Known known, UUID person) {
        Set<UUID> own = known.events().stream()
                .filter(event -> event.body().subject().equals(Optional.of(person)))
                .map(Event::id)
                .collect(Collectors.toSet());
        return known.events().stream()
                .filter(event -> own.contains(event.id()) && !isAboutLeaving(event.body())
                        || event.body() instanceof Keeping.Corrected corrected && own.contains(corrected.event()))
                .map(Event::recorded)
                .max(Instant::compareTo);
    }

    private static boolean isAboutLeaving(Body said) {
        return said instanceof Keeping.RelationEnded
                || said instanceof Keeping.LegalHold
                || said instanceof Keeping.Anonymised;
    }

    private static Optional<LocalDate> left(Histories.Known known, UUID person, Instant at) {
        List<Fact<Keeping.RelationEnded>> ends = known.history().about(person, Keeping.RelationEnded.class, at);
        return ends.isEmpty()
                ? Optional.empty()
                : Optional.of(ends.get(ends.size() - 1).body().on());
    }

    private static boolean isHeld(Histories.Known known, UUID person, Instant at) {
        List<Fact<Keeping.LegalHold>> holds = known.history().about(person, Keeping.LegalHold.class, at);
        return !holds.isEmpty() && holds.get(holds.size() - 1).body().on();
    }

    private static void needNoHold(Histories.Known known, UUID person, Instant at) {
        if (isHeld(known, person, at)) {
            throw RegisterProblem.with("person", "A legal hold lies on these lines; nothing is erased.");
        }
    }
}
