package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Whether somebody may train, observe or decide at an instant. */
final class Qualifications {
    private final History history;

    Qualifications(History history) {
        this.history = history;
    }

    /**
     * Whether a qualification holds: the newest one given by then runs through that day, was not given by the person, and
     * neither ended nor was followed by a withdrawal for cause.
     */
    boolean holds(UUID person, Act act, Instant at) {
        Optional<Fact<Setting.QualificationGiven>> given =
                History.last(history.about(person, Setting.QualificationGiven.class, at).stream()
                        .filter(f -> f.body().act() == act)
                        .toList());
        return given.isPresent()
                && at.isBefore(history.days().after(given.get().body().through()))
                && !person.equals(given.get().body().by())
                && history.about(person, Setting.QualificationEnded.class, at).stream()
                        .noneMatch(end -> end.body().act() == act && end.undoes(given.get()))
                && history.about(person, Decision.Withdrawn.class, at).stream()
                        .noneMatch(w -> w.body().forCause() && w.undoes(given.get()));
    }

    /** Everything that somebody lost for cause: the own clearance, or the right to train or to observe. */
    List<Fact<?>> losses(UUID person, Instant at) {
        List<Fact<?>> losses = new ArrayList<>();
        history.about(person, Decision.Withdrawn.class, at).stream()
                .filter(f -> f.body().forCause())
                .forEach(losses::add);
        history.about(person, Setting.QualificationEnded.class, at).stream()
                .filter(f -> f.body().forCause())
                .forEach(losses::add);
        return losses;
    }
}
