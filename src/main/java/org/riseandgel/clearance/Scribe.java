package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.account.People;
import org.riseandgel.account.Roles;
import org.riseandgel.clearance.ledger.Histories;
import org.riseandgel.clearance.ledger.Ledger;
import org.riseandgel.clearance.ledger.Notes;
import org.riseandgel.clearance.rule.Body;
import org.riseandgel.clearance.rule.Event;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Note;

/** Writes lines into the register for the services: who may, when it happened, what is kept beside it. */
@ApplicationScoped
class Scribe {
    private final Ledger ledger;
    private final Notes notes;
    private final Histories histories;
    private final Answers answers;
    private final KnowledgeEvidence knowledge;
    private final People people;
    private final Clock clock;

    Scribe(
            Ledger ledger,
            Notes notes,
            Histories histories,
            Answers answers,
            KnowledgeEvidence knowledge,
            People people,
            Clock clock) {
        this.ledger = ledger;
        this.notes = notes;
        this.histories = histories;
        this.answers = answers;
        this.knowledge = knowledge;
        this.people = people;
        this.clock = clock;
    }

    /** Lets only instructors and safety leads go on. */
    void needStaff(UUID actor) {
        needOne(actor, Set.of(Roles.INSTRUCTOR, Roles.SAFETY_LEAD), "Instructors and safety leads do this.");
    }

    /** Lets only safety leads go on. */
    void needSafetyLead(UUID actor) {
        needOne(actor, Set.of(Roles.SAFETY_LEAD), "A safety lead does this.");
    }

    /** Lets only safety leads and the office go on. */
    void needKeeper(UUID actor) {
        needOne(actor, Set.of(Roles.SAFETY_LEAD, Roles.OFFICE), "A safety lead or the office does this.");
    }

    /** Lets only the person go on. */
    void needSelf(UUID actor, UUID person) {
        if (actor == null || !actor.equals(person)) {
            throw new RegisterDenied("Everybody does this for themselves.");
        }
    }

    /** Refuses whom the school does not know. */
    void needPerson(UUID person, String field) {
        if (person == null || people.find(person).isEmpty()) {
            throw RegisterProblem.with(field, "Choose one of the school's people.");
        }
    }

    /** The time of something that has happened; null means now. */
    @Transactional(Transactional.TxType.MANDATORY)
    Instant happened(Instant when, String field) {
        Instant now = ledger.now();
        if (when != null && when.isAfter(now)) {
            throw RegisterProblem.with(field, "This has not happened yet; give a time that has passed.");
        }
        return when == null ? now : when;
    }

    /** Now, as the next line would have it; nobody else adds a line until the transaction ends. */
    @Transactional(Transactional.TxType.MANDATORY)
    Instant now() {
        return ledger.now();
    }

    /** What is known of some people now, or as the newest line has it when the clock is behind; null is nobody. */
    Histories.Known known(UUID... about) {
        return histories.of(Arrays.stream(about).filter(Objects::nonNull).toList(), latest());
    }

    /** Everything that is known now. */
    Histories.Known all() {
        return histories.all(latest());
    }

    /** Keeps a text that has to be there. */
    Note note(UUID about, String field, String words) {
        if (words == null || words.isBlank()) {
            throw RegisterProblem.with(field, "Write a word about it here; it goes on record.");
        }
        return optionalNote(about, field, words);
    }

    /** Keeps a text if there is one. */
    Note optionalNote(UUID about, String field, String words) {
        if (words == null || words.isBlank()) {
            return null;
        }
        String text = words.strip().replace("\r\n", "\n").replace("\0", "");
        if (text.length() > Notes.LONGEST) {
            throw RegisterProblem.with(
                    field, "This has %d characters; at most %d are kept.".formatted(text.length(), Notes.LONGEST));
        }
        return notes.keep(about, text, clock.instant());
    }

    /** Adds a line, and throws away the answers that may be others now. */
    @Transactional(Transactional.TxType.MANDATORY)
    Event write(UUID by, Instant effective, Body said) {
        Event event = ledger.add(by, effective, said);
        answers.forget(said);
        return event;
    }

    /** Writes down the sittings of a person that the register does not know yet. */
    @Transactional(Transactional.TxType.MANDATORY)
    void noteSittings(UUID person) {
        sittingsNotNoted(known(person), person).forEach(sitting -> write(null, sitting.handedInAt(), sitting));
    }

    /** What is known of a person with the sittings that are not written down yet, as if they were. */
    Histories.Known knownWithSittings(UUID person, UUID... others) {
        Set<UUID> all = new HashSet<>(List.of(others));
        all.add(person);
        Instant now = latest();
        Histories.Known known = histories.of(all, now);
        long number = Long.MAX_VALUE / 2;
        List<Event> supposed = new ArrayList<>();
        for (Evidence.SittingNoted sitting : sittingsNotNoted(known, person)) {
            supposed.add(
                    new Event(number++, UUID.randomUUID(), sitting.handedInAt(), later(now, sitting), null, sitting));
        }
        return supposed.isEmpty() ? known : histories.of(all, now, supposed);
    }

    private List<Evidence.SittingNoted> sittingsNotNoted(Histories.Known known, UUID person) {
        Set<UUID> noted = new HashSet<>();
        known.events().stream()
                .map(Event::body)
                .filter(Evidence.SittingNoted.class::isInstance)
                .map(Evidence.SittingNoted.class::cast)
                .forEach(sitting -> noted.add(sitting.sitting()));
        return knowledge.handedIn(person).stream()
                .filter(sitting -> !noted.contains(sitting.sitting()))
                .sorted(Comparator.comparing(Evidence.SittingNoted::handedInAt))
                .toList();
    }

    private static Instant later(Instant now, Evidence.SittingNoted sitting) {
        return sitting.handedInAt().isAfter(now) ? sitting.handedInAt() : now;
    }

    /** Now, or the time of the newest line when the clock is behind it. */
    Instant latest() {
        Instant now = clock.instant();
        Instant newest = ledger.head().recorded();
        return now.isBefore(newest) ? newest : now;
    }

    /** Whether the clock is behind the newest line; while it is, nobody can be said to be cleared. */
    boolean isClockBehind() {
        return ledger.isAhead();
    }

    private void needOne(UUID actor, Set<String> roles, String message) {
        boolean may = actor != null
                && people.find(actor)
                        .filter(person -> !person.isDisabled())
                        .filter(person -> person.roles().stream().anyMatch(roles::contains))
                        .isPresent();
        if (!may) {
            throw new RegisterDenied(message);
        }
    }
}
