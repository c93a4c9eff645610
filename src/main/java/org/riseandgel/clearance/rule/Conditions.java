package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/** Everything that can stand against a clearance that was granted, each with the instant from which it does. */
final class Conditions {
    private final History history;
    private final Policy policy;
    private final DecisionRule decisions;
    private final Suspensions suspensions;
    private final ClearanceRule clearances;

    Conditions(
            History history, Policy policy, DecisionRule decisions, Suspensions suspensions, ClearanceRule clearances) {
        this.history = history;
        this.policy = policy;
        this.decisions = decisions;
        this.suspensions = suspensions;
        this.clearances = clearances;
    }

    void add(Question question, Scope scope, Fact<Decision.Granted> grant, Instant at, Limits limits) {
        clearances.isUndone(grant, scope, at).ifPresent(when -> limits.add(Reason.WITHDRAWN, when));
        suspensions.byThemselves(question, scope, grant, policy, at, limits);
        if (!decisions.stands(grant)) {
            limits.add(Reason.EVIDENCE_FELL, grant.effective());
        }
        age(question, grant, at, limits);
        fit(question.person(), scope, at, limits);
        deltas(question, scope, grant, at, limits);
        idle(question, scope, grant, at, limits);
        history.about(question.person(), Setting.RenewalAsked.class, at).stream()
                .filter(f -> f.body().grant().equals(grant.id()))
                .forEach(f -> limits.add(
                        Reason.RENEWAL_OVERDUE, history.days().after(f.body().due())));
    }

    private void age(Question question, Fact<Decision.Granted> grant, Instant at, Limits limits) {
        UUID person = question.person();
        boolean supervised = grant.body().supervised();
        switch (history.age(person, at)) {
            case UNKNOWN -> limits.add(Reason.AGE_UNKNOWN);
            case ADULT -> {
                if (supervised) {
                    limits.add(Reason.TURNED_18);
                }
            }
            case UNDER_18 -> {
                firstAdultDay(person, history.days().of(at), grant.body().validThrough())
                        .ifPresent(day ->
                                limits.add(Reason.TURNED_18, history.days().start(day)));
                Optional<Fact<Evidence.AgeException>> exception = decisions.exception(person, at, id -> true);
                if (!supervised || exception.isEmpty()) {
                    limits.add(Reason.UNDER_18);
                } else {
                    limits.add(
                            Reason.UNDER_18,
                            history.days().after(exception.get().body().through()));
                    supervisor(question.by(exception.get().body().supervisor()), at, limits);
                }
            }
        }
    }

    private void supervisor(Question question, Instant at, Limits limits) {
        boolean adult = history.age(question.person(), at) == Ages.Age.ADULT;
        Optional<Standing> standing = adult ? Optional.of(clearances.standing(question, at)) : Optional.empty();
        if (standing.filter(Standing::isCleared).isEmpty()) {
            limits.add(Reason.SUPERVISOR_NOT_CLEARED);
        } else if (standing.get().holdsUntil() != null) {
            limits.add(Reason.SUPERVISOR_NOT_CLEARED, standing.get().holdsUntil());
        }
    }

    private void fit(UUID person, Scope scope, Instant at, Limits limits) {
        Optional<Fact<Evidence.FitForTask>> said = History.last(history.about(person, Evidence.FitForTask.class, at));
        if (said.isPresent() ? !said.get().body().fit() : scope.respirator()) {
            limits.add(Reason.NOT_FIT_FOR_TASK, said.map(Fact::effective).orElse(Instant.MIN));
        }
    }

    private void deltas(Question question, Scope scope, Fact<Decision.Granted> grant, Instant at, Limits limits) {
        UUID person = question.person();
        suspensions.newSheets(scope, grant, at).stream()
                .filter(sheet -> !sheet.body().changesProtection())
                .filter(sheet -> suspensions.deltaDone(person, sheet.id(), at).isEmpty())
                .forEach(sheet -> limits.add(
                        Reason.DELTA_OVERDUE, history.days().after(sheet.body().deltaDue())));
        Stream.concat(
                        history.general(Setting.DeltaAsked.class, at).stream(),
                        history.about(person, Setting.DeltaAsked.class, at).stream())
                .filter(f -> history.concerns(f.body().scope(), question) && f.undoes(grant))
                .filter(f -> suspensions.deltaDone(person, f.id(), at).isEmpty())
                .forEach(f -> limits.add(
                        Reason.DELTA_OVERDUE, history.days().after(f.body().due())));
    }

    /** After a long time without handling a delta training is due; doing the work late does not make up for it. */
    private void idle(Question question, Scope scope, Fact<Decision.Granted> grant, Instant at, Limits limits) {
        Instant last = suspensions.lastLift(question, grant.effective(), at);
        Optional<Instant> delta = suspensions.deltaDone(question.person(), null, at);
        if (delta.isPresent() && delta.get().isAfter(last)) {
            last = delta.get();
        }
        for (Fact<Evidence.Handled> handled : history.about(question.person(), Evidence.Handled.class, at)) {
            boolean inTime = handled.effective().isBefore(idleFrom(last));
            if (handled.body().scope().equals(scope.id())
                    && inTime
                    && handled.effective().isAfter(last)) {
                last = handled.effective();
            }
        }
        limits.add(Reason.DELTA_OVERDUE, idleEnd(last));
    }

    /** From here on a delta training is due. */
    private Instant idleFrom(Instant last) {
        return history.days()
                .after(history.days().of(last).plusDays(policy.periods().idleDays()));
    }

    private Instant idleEnd(Instant last) {
        LocalDate asked = history.days().of(last).plusDays(policy.periods().idleDays());
        return history.days().after(asked.plusDays(policy.periods().deltaDueDays()));
    }

    /** Halves the span of days until the first adult one is found: the birthday itself is not asked for. */
    private Optional<LocalDate> firstAdultDay(UUID person, LocalDate minor, LocalDate last) {
        if (last.isBefore(minor) || history.ages().on(person, last) != Ages.Age.ADULT) {
            return Optional.empty();
        }
        LocalDate low = minor;
        LocalDate high = last;
        while (low.plusDays(1).isBefore(high)) {
            LocalDate middle = low.plusDays((high.toEpochDay() - low.toEpochDay()) / 2);
            if (history.ages().on(person, middle) == Ages.Age.ADULT) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Optional.of(high);
    }
}
