package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;

/** How long a person's respirator papers hold without a gap. */
final class Respirator {
    private final History history;
    private final Policy policy;
    private final UUID person;
    private final Predicate<UUID> counts;

    Respirator(History history, Policy policy, UUID person, Predicate<UUID> counts) {
        this.history = history;
        this.policy = policy;
        this.person = person;
        this.counts = counts;
    }

    /** A span of time that one paper covers; a failed fit test covers none and ends the one before. */
    private record Span(Instant from, Instant until, UUID id) {}

    /**
     * The first instant from a start on that is not covered by both fit test and training; the start itself when it is
     * not covered.
     */
    Instant heldUntil(Instant start, Instant at) {
        Instant fit = endOf(fitTests(at), start);
        Instant training = endOf(trainings(at), start);
        return fit.isBefore(training) ? fit : training;
    }

    /** The newest fit test and training. */
    Set<UUID> newest(Instant at) {
        Set<UUID> ids = new HashSet<>();
        History.last(fitTests(at)).ifPresent(span -> ids.add(span.id()));
        History.last(trainings(at)).ifPresent(span -> ids.add(span.id()));
        return ids;
    }

    private List<Span> fitTests(Instant at) {
        return history.about(person, Evidence.FitTested.class, at).stream()
                .filter(f -> counts.test(f.id()))
                .map(f -> new Span(
                        f.effective(),
                        f.body().passed()
                                ? history.days()
                                        .afterMonths(
                                                f.effective(), policy.periods().fitTestMonths())
                                : f.effective(),
                        f.id()))
                .toList();
    }

    private List<Span> trainings(Instant at) {
        Qualifications qualifications = new Qualifications(history);
        return history.about(person, Evidence.RespiratorTrained.class, at).stream()
                .filter(f -> counts.test(f.id()))
                .filter(f -> !person.equals(f.body().trainer())
                        && qualifications.holds(f.body().trainer(), Act.TRAIN, f.effective()))
                .map(f -> new Span(
                        f.effective(),
                        history.days()
                                .afterMonths(f.effective(), policy.periods().respiratorTrainingMonths()),
                        f.id()))
                .toList();
    }

    /** Walks the spans in their order: a newer paper takes over from an older one as long as there is no gap. */
    private static Instant endOf(List<Span> spans, Instant start) {
        Instant end = start;
        for (Span span : spans) {
            if (!span.from().isAfter(start)) {
                end = span.until().isAfter(start) ? span.until() : start;
            } else if (span.from().isBefore(end)) {
                end = span.until();
            }
        }
        return end;
    }
}
