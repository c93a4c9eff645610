package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * What is suspended for a question: by somebody's decision, or by itself. Only a reinstatement after it lifts it, and only
 * one that was decided by people who knew of it.
 */
final class Suspensions {
    private final History history;
    private final DecisionRule decisions;

    Suspensions(History history, DecisionRule decisions) {
        this.history = history;
        this.decisions = decisions;
    }

    /** Suspended by a decision, or by a recall check with a critical item wrong; with or without a grant. */
    void decided(Question question, Instant at, Limits limits) {
        List<Fact<?>> found = new ArrayList<>();
        history.about(question.person(), Decision.Suspended.class, at).stream()
                .filter(f -> history.concerns(f.body().scope(), question))
                .forEach(found::add);
        history.about(question.person(), Evidence.SittingNoted.class, at).stream()
                .filter(f -> f.body().kind() == Evidence.SittingNoted.Kind.RECALL
                        && f.body().criticalWrong() > 0)
                .forEach(found::add);
        found.stream()
                .filter(one -> !isLifted(question, one, at))
                .forEach(one -> limits.add(Reason.SUSPENDED, one.effective()));
    }

    /** Suspended by itself while a grant runs. */
    void byThemselves(
            Question question, Scope scope, Fact<Decision.Granted> grant, Policy policy, Instant at, Limits limits) {
        parties(question, grant, policy, at, limits);
        if (scope.respirator()) {
            limits.add(Reason.RESPIRATOR_LAPSED, lapse(question, grant.effective(), policy, at));
        }
        for (Fact<Setting.SdsFiled> sheet : newSheets(scope, grant, at)) {
            if (sheet.body().changesProtection()) {
                sheetOverdue(question, sheet, at).ifPresent(overdue -> limits.add(Reason.SDS_DELTA_OVERDUE, overdue));
            }
        }
    }

    /** Revisions of the sheet that the grant does not know. */
    List<Fact<Setting.SdsFiled>> newSheets(Scope scope, Fact<Decision.Granted> grant, Instant at) {
        return history.general(Setting.SdsFiled.class, at).stream()
                .filter(f -> f.body().substance().equals(scope.substance())
                        && !f.body().revision().equals(grant.body().sdsRevision())
                        && f.undoes(grant))
                .toList();
    }

    /** The first delta training that answers an event, given by somebody who was qualified to train then. */
    Optional<Instant> deltaDone(UUID person, UUID asked, Instant at) {
        Qualifications qualifications = new Qualifications(history);
        return history.about(person, Evidence.DeltaDone.class, at).stream()
                .filter(f -> asked == null
                        ? f.body().asked() == null
                        : asked.equals(f.body().asked()))
                .filter(f -> !person.equals(f.body().trainer())
                        && qualifications.holds(f.body().trainer(), Act.TRAIN, f.effective()))
                .map(Fact::effective)
                .reduce((first, second) -> asked == null ? second : first);
    }

    /** The newest reinstatement for a question, or the given instant if that is later. */
    Instant lastLift(Question question, Instant otherwise, Instant at) {
        return lifts(question, at).stream()
                .filter(f -> decisions.lifts(f, Instant.MIN))
                .map(Fact::effective)
                .filter(otherwise::isBefore)
                .max(Instant::compareTo)
                .orElse(otherwise);
    }

    /** The first instant without papers that no reinstatement after it has made good. */
    private Instant lapse(Question question, Instant start, Policy policy, Instant at) {
        Respirator papers = new Respirator(history, policy, question.person(), id -> true);
        Instant lapse = papers.heldUntil(start, at);
        Optional<Instant> lifted = liftAfter(question, lapse, at);
        while (lifted.isPresent()) {
            lapse = papers.heldUntil(lifted.get(), at);
            lifted = liftAfter(question, lapse, at);
        }
        return lapse;
    }

    private Optional<Instant> liftAfter(Question question, Instant lapse, Instant at) {
        return lifts(question, at).stream()
                .filter(f -> f.effective().isAfter(lapse) && decisions.lifts(f, lapse))
                .map(Fact::effective)
                .findFirst();
    }

    private void parties(Question question, Fact<Decision.Granted> grant, Policy policy, Instant at, Limits limits) {
        Instant oldest = history.days()
                .start(history.days()
                        .of(grant.effective())
                        .minusMonths(policy.periods().separationMonths()));
        Qualifications qualifications = new Qualifications(history);
        new Participation(history, question.person())
                .all(at).stream()
                        .filter(part -> !part.when().isBefore(oldest))
                        .forEach(part -> qualifications.losses(part.by(), at).stream()
                                .filter(loss -> loss.undoes(grant)
                                        && !loss.effective().isBefore(part.when())
                                        && !isLifted(question, loss, at))
                                .forEach(loss -> limits.add(Reason.PARTY_WITHDRAWN, loss.effective())));
    }

    private Optional<Instant> sheetOverdue(Question question, Fact<Setting.SdsFiled> sheet, Instant at) {
        Instant overdue = history.days().after(sheet.body().deltaDue());
        Optional<Instant> done = deltaDone(question.person(), sheet.id(), at);
        if (done.isPresent() && done.get().isBefore(overdue)) {
            return Optional.empty();
        }
        boolean lifted = done.isPresent()
                && lifts(question, at).stream()
                        .anyMatch(f -> f.effective().isAfter(overdue)
                                && !f.effective().isBefore(done.get())
                                && decisions.lifts(f, overdue));
        return lifted ? Optional.empty() : Optional.of(overdue);
    }

    private boolean isLifted(Question question, Fact<?> suspension, Instant at) {
        return lifts(question, at).stream()
                .anyMatch(f -> f.knewOf(suspension) && decisions.lifts(f, suspension.effective()));
    }

    private List<Fact<Decision.Reinstated>> lifts(Question question, Instant at) {
        return history.about(question.person(), Decision.Reinstated.class, at).stream()
                .filter(f -> history.scope(f.body().scope())
                        .filter(scope -> scope.covers(question))
                        .isPresent())
                .toList();
    }
}
