package org.riseandgel.clearance;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jboss.logging.Logger;
import org.riseandgel.clearance.ledger.Histories;
import org.riseandgel.clearance.ledger.Ledger;
import org.riseandgel.clearance.rule.ClearanceRule;
import org.riseandgel.clearance.rule.Reason;
import org.riseandgel.clearance.rule.Standing;
import org.riseandgel.clearance.rule.Status;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.platform.sql.Sql;

/**
 * May this person do this task with this substance in this form in this room, now? Whatever goes wrong on the way, the
 * answer is no.
 */
@ApplicationScoped
public class RegisterCheck {
    private static final Logger LOG = Logger.getLogger(RegisterCheck.class);

    private final Answers answers;
    private final Ledger ledger;
    private final Histories histories;
    private final Sql sql;
    private final Clock clock;

    RegisterCheck(Answers answers, Ledger ledger, Histories histories, Sql sql, Clock clock) {
        this.answers = answers;
        this.ledger = ledger;
        this.histories = histories;
        this.sql = sql;
        this.clock = clock;
    }

    /**
     * The answer.
     *
     * @param reason the first reason against it; null when there is none
     * @param words the answer in a sentence
     * @param validThrough the last day of the clearance; null when there is none
     * @param holdsUntil the first instant at which the answer is worse if nothing happens; null when it is a no
     * @param supervisor who has to be there; null unless supervised only
     */
    public record CheckAnswer(
            Status status,
            Reason reason,
            String words,
            LocalDate validThrough,
            Instant holdsUntil,
            boolean singleInstructor,
            UUID supervisor,
            Instant at) {
        public boolean isYes() {
            return status == Status.CLEARED;
        }
    }

    /**
     * Asks, and writes down that it was asked.
     *
     * @param asking who asks; null for a door that nobody is signed in at
     */
    public CheckAnswer ask(UUID asking, UUID person, Place place, Task task) {
        Instant now = clock.instant();
        try {
            CheckAnswer answer = answer(standing(person, place, task, now), now);
            note(asking, person, place, task, answer);
            return answer;
        } catch (RuntimeException e) {
            LOG.error("The register could not be asked; the answer was no", e);
            return answer(unreadable(), now);
        }
    }

    /** The answer alone, for lists; not written down. */
    public CheckAnswer look(UUID person, Place place, Task task) {
        Instant now = clock.instant();
        try {
            return answer(standing(person, place, task, now), now);
        } catch (RuntimeException e) {
            LOG.error("The register could not be read; the answer was no", e);
            return answer(unreadable(), now);
        }
    }

    private Standing standing(UUID person, Place place, Task task, Instant now) {
        Optional<Standing> kept = answers.find(person, place.id(), task, now).flatMap(found -> found.at(now));
        return kept.orElseGet(() -> QuarkusTransaction.joiningExisting().call(() -> workOut(person, place, task, now)));
    }

    /** Works the answer out from the lines. With a clock that is behind the newest line, nothing can be said. */
    private Standing workOut(UUID person, Place place, Task task, Instant now) {
        ledger.holdStill();
        if (ledger.head().recorded().isAfter(now)) {
            LOG.error("The clock is behind the newest line of the register; nobody is cleared until it is right");
            return unreadable();
        }
        Histories.Known known = histories.of(Set.of(person), now);
        List<ClearanceRule.Piece> pieces =
                new ClearanceRule(known.history()).timeline(place.question(person, task), now);
        if (known.history().isReadable()) {
            answers.keep(person, place.id(), task, pieces, known.people());
        }
        return pieces.get(0).standing();
    }

    private void note(UUID asking, UUID person, Place place, Task task, CheckAnswer answer) {
        sql.change(
                """
                INSERT INTO register_check (at, asked_by, person_id, place_id, task, status, reason)
                VALUES (?, ?, ?, ?, ?, ?, ?)""",
                answer.at(),
                asking,
                person,
                place.id(),
                task.name(),
                answer.status().name(),
                answer.reason() == null ? null : answer.reason().name());
    }

    private static Standing unreadable() {
        return Standing.none(Reason.UNREADABLE);
    }

    private static CheckAnswer answer(Standing standing, Instant now) {
        return new CheckAnswer(
                standing.status(),
                standing.firstReason().orElse(null),
                Words.of(standing),
                standing.validThrough(),
                standing.holdsUntil(),
                standing.singleInstructor(),
                standing.supervisor(),
                now);
    }
}
