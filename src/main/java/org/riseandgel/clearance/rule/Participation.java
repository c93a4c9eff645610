package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** Who took part in the training or the examination of one person. */
final class Participation {
    private final History history;
    private final UUID person;

    Participation(History history, UUID person) {
        this.history = history;
        this.person = person;
    }

    /** Somebody and when. */
    record Part(UUID by, Instant when) {}

    /** Whether somebody trained, watched or saw the equipment of this person from that day on. */
    boolean has(UUID other, int months, Instant at) {
        Instant oldest = history.days().start(history.days().of(at).minusMonths(months));
        return all(at).stream()
                .anyMatch(part -> part.by().equals(other) && !part.when().isBefore(oldest));
    }

    /** Everybody who took part by then. */
    List<Part> all(Instant at) {
        List<Part> parts = new ArrayList<>();
        add(parts, Evidence.TrainingGiven.class, at);
        add(parts, Evidence.RespiratorTrained.class, at);
        add(parts, Evidence.DeltaDone.class, at);
        add(parts, Evidence.ObservationRecorded.class, at);
        add(parts, Evidence.PpeShown.class, at);
        return parts;
    }

    private void add(List<Part> parts, Class<? extends Evidence> kind, Instant at) {
        history.about(person, kind, at).forEach(f -> parts.add(new Part(other(f.body()), f.effective())));
    }

    private static UUID other(Evidence evidence) {
        if (evidence instanceof Evidence.TrainingGiven training) {
            return training.trainer();
        }
        if (evidence instanceof Evidence.RespiratorTrained training) {
            return training.trainer();
        }
        if (evidence instanceof Evidence.DeltaDone delta) {
            return delta.trainer();
        }
        if (evidence instanceof Evidence.ObservationRecorded practical) {
            return practical.observer();
        }
        return ((Evidence.PpeShown) evidence).observer();
    }
}
