package org.riseandgel.clearance.rule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * What is left of events after later ones corrected them. Evidence and what the school laid down may be replaced or
 * annulled. Decisions that give may be annulled, never replaced: that would be a grant without its conditions. What takes
 * away is never corrected; reinstating undoes it, with two people.
 */
public final class Corrections {
    private final List<Fact<?>> facts = new ArrayList<>();
    private final boolean sound;

    private Corrections(List<Event> inOrder) {
        Map<UUID, Event> byId = new HashMap<>();
        Map<UUID, Event> correctionOf = new HashMap<>();
        Set<Long> numbers = new HashSet<>();
        boolean fine = true;
        for (Event event : inOrder) {
            fine &= numbers.add(event.number()) && byId.putIfAbsent(event.id(), event) == null;
            if (event.body() instanceof Keeping.Corrected corrected) {
                fine &= problem(corrected, byId.get(corrected.event())).isEmpty();
                correctionOf.put(corrected.event(), event);
            }
        }
        sound = fine;
        for (Event event : inOrder) {
            fact(event, correctionOf.get(event.id())).ifPresent(facts::add);
        }
    }

    static Corrections of(Collection<Event> events) {
        return new Corrections(
                events.stream().sorted(Comparator.comparingLong(Event::number)).toList());
    }

    /** Why an event may not be corrected like this; empty when it may. */
    public static Optional<String> problem(Keeping.Corrected correction, Event wrong) {
        if (wrong == null) {
            return Optional.of("The event to be corrected is not in the register.");
        }
        if (correction.by() == null
                || correction.confirmedBy() == null
                || correction.by().equals(correction.confirmedBy())) {
            return Optional.of("A correction takes two people: one corrects, another confirms.");
        }
        Optional<UUID> subject = wrong.body().subject();
        if (subject.equals(Optional.of(correction.by())) || subject.equals(Optional.of(correction.confirmedBy()))) {
            return Optional.of("Nobody corrects or confirms what is about themselves.");
        }
        if (correction.replacement() == null) {
            return mayFall(wrong.body())
                    ? Optional.empty()
                    : Optional.of("This kind of event is not annulled; what takes away is undone by reinstating.");
        }
        return replaces(correction, wrong.body());
    }

    boolean areSound() {
        return sound;
    }

    List<Fact<?>> facts() {
        return facts;
    }

    private static Optional<String> replaces(Keeping.Corrected correction, Body wrong) {
        Body right = correction.replacement();
        boolean kind = wrong instanceof Evidence
                || wrong instanceof Setting.QualificationGiven
                || wrong instanceof Setting.DeltaAsked
                || wrong instanceof Setting.SdsFiled;
        if (!kind) {
            return Optional.of("This kind of event is annulled or undone, not replaced.");
        }
        boolean same = right.getClass() == wrong.getClass() && right.subject().equals(wrong.subject());
        return same && correction.effective() != null
                ? Optional.empty()
                : Optional.of("The replacement is of the same kind, about the same person, and has its time.");
    }

    /** Whether a correction may say of such an event that it did not happen. */
    public static boolean mayFall(Body wrong) {
        return wrong instanceof Evidence
                || wrong instanceof Setting.QualificationGiven
                || wrong instanceof Setting.DeltaAsked
                || wrong instanceof Setting.SdsFiled
                || wrong instanceof Decision.Granted
                || wrong instanceof Decision.Reinstated
                || wrong instanceof Decision.AppealDecided;
    }

    private static Optional<Fact<?>> fact(Event event, Event correction) {
        if (correction == null) {
            return Optional.of(new Fact<>(event.number(), event.id(), event.effective(), event.body()));
        }
        Keeping.Corrected corrected = (Keeping.Corrected) correction.body();
        return Optional.ofNullable(corrected.replacement())
                .map(right -> new Fact<>(event.number(), event.id(), corrected.effective(), right));
    }
}
