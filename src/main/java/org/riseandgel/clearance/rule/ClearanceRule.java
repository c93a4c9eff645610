package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * The rule of the register: a pure function of what was known, a question and an instant. docs/register.md says it in
 * words. Without a further event an answer only ever gets worse.
 */
public final class ClearanceRule {
    private static final List<Reason> SUSPENDING =
            List.of(Reason.SUSPENDED, Reason.PARTY_WITHDRAWN, Reason.RESPIRATOR_LAPSED, Reason.SDS_DELTA_OVERDUE);

    private static final Comparator<Standing> BEST = Comparator.comparing(Standing::status)
            .thenComparing(s -> s.reasons().isEmpty() ? 0 : -s.reasons().get(0).ordinal())
            .thenComparing(s -> s.holdsUntil() == null ? Instant.MAX : s.holdsUntil(), Comparator.reverseOrder());

    private final History history;
    private final DecisionRule decisions;
    private final Suspensions suspensions;
    private final Validity validity;

    /** The rule over what was known. */
    public ClearanceRule(History history) {
        this.history = history;
        this.decisions = new DecisionRule(history, this);
        this.suspensions = new Suspensions(history, decisions);
        this.validity = new Validity(history);
    }

    /**
     * A stretch of time with one answer.
     *
     * @param from its first instant; it lasts until the next one begins
     */
    public record Piece(Instant from, Standing standing) {}

    /** What the register says about a question at an instant. */
    public Standing standing(Question question, Instant at) {
        return best(outlooks(question, at), at);
    }

    /** The answers from an instant on if nothing more happens, each with its beginning. */
    public List<Piece> timeline(Question question, Instant at) {
        List<Outlook> outlooks = outlooks(question, at);
        List<Piece> pieces = new ArrayList<>();
        Optional<Instant> from = Optional.of(at);
        while (from.isPresent()) {
            Instant start = from.get();
            pieces.add(new Piece(start, best(outlooks, start)));
            from = outlooks.stream()
                    .flatMap(outlook -> outlook.limits().next(start).stream())
                    .min(Instant::compareTo);
        }
        return pieces;
    }

    /** Whether a clearance may be granted now, precondition by precondition. */
    public Judgement mayGrant(Proposal proposal, Instant at) {
        return history.isReadable()
                ? history.policy(at)
                        .map(policy -> decisions.grant(proposal, policy, at))
                        .orElseGet(ClearanceRule::withoutPolicy)
                : withoutPolicy();
    }

    /** Whether what is suspended may be given back now, precondition by precondition. */
    public Judgement mayReinstate(Proposal proposal, Instant at) {
        return history.isReadable()
                ? history.policy(at)
                        .map(policy -> decisions.reinstatement(proposal, policy, at))
                        .orElseGet(ClearanceRule::withoutPolicy)
                : withoutPolicy();
    }

    /**
     * Whether the clearance that a person now has in a scope would also be granted under another policy, and would not
     * have run out under it.
     */
    public boolean wouldPass(UUID person, Scope scope, Policy other, Instant at) {
        return history.grant(person, scope.id(), at)
                .filter(grant -> decisions.carries(grant, other))
                .filter(grant -> !history.days()
                        .of(at)
                        .isAfter(validity.through(
                                other,
                                new Validity.Terms(scope, grant.body().countersigner() != null, null),
                                Optional.empty(),
                                grant.effective())))
                .isPresent();
    }

    /** Whether somebody may train, observe or decide at an instant. */
    public boolean isQualified(UUID person, Act act, Instant at) {
        return history.isReadable() && new Qualifications(history).holds(person, act, at);
    }

    /** Since when a scope is suspended for a question; empty when it is not. */
    List<Instant> suspendedSince(Question question, Scope scope, Instant at) {
        Limits limits = new Limits();
        suspensions.decided(question, at, limits);
        history.grant(question.person(), scope.id(), at)
                .filter(grant -> at.isBefore(end(grant, scope))
                        && isUndone(grant, scope, at).isEmpty())
                .ifPresent(grant -> history.policy(at)
                        .ifPresent(policy -> suspensions.byThemselves(question, scope, grant, policy, at, limits)));
        return limits.since(SUSPENDING, at);
    }

    /** Whether a delta training that the running grant needs is overdue and has not been had. */
    boolean missesDelta(Question question, Scope scope, Instant at) {
        return history.grant(question.person(), scope.id(), at)
                .filter(grant -> at.isBefore(end(grant, scope)))
                .filter(grant -> suspensions.newSheets(scope, grant, at).stream()
                        .anyMatch(sheet ->
                                !at.isBefore(history.days().after(sheet.body().deltaDue()))
                                        && suspensions
                                                .deltaDone(question.person(), sheet.id(), at)
                                                .isEmpty()))
                .isPresent();
    }

    /** Since when a grant is withdrawn; empty when it is not. */
    Optional<Instant> isUndone(Fact<Decision.Granted> grant, Scope scope, Instant at) {
        Question question = Question.about(grant.body().person(), scope);
        return history.about(grant.body().person(), Decision.Withdrawn.class, at).stream()
                .filter(f -> history.concerns(f.body().scope(), question) && f.undoes(grant))
                .map(Fact::effective)
                .min(Instant::compareTo);
    }

    private List<Outlook> outlooks(Question question, Instant at) {
        Optional<Policy> policy = history.policy(at);
        if (!history.isReadable() || policy.isEmpty()) {
            return List.of();
        }
        return history.openScopes(at).stream()
                .filter(scope -> scope.covers(question))
                .map(scope -> outlook(question, scope, policy.get(), at))
                .toList();
    }

    private Standing best(List<Outlook> outlooks, Instant at) {
        boolean known = history.isReadable() && history.policy(at).isPresent();
        return outlooks.stream()
                .map(outlook -> outlook.at(at))
                .min(BEST)
                .orElse(Standing.none(known ? Reason.NO_SUCH_SCOPE : Reason.UNREADABLE));
    }

    private Outlook outlook(Question question, Scope scope, Policy policy, Instant at) {
        Limits limits = new Limits();
        suspensions.decided(question, at, limits);
        Optional<Fact<Decision.Granted>> grant = history.grant(question.person(), scope.id(), at);
        if (grant.isEmpty()) {
            limits.add(Reason.NEVER_GRANTED);
            return new Outlook(scope, null, null, false, null, false, limits);
        }
        Conditions conditions = new Conditions(history, policy, decisions, suspensions, this);
        conditions.add(question, scope, grant.get(), at, limits);
        LocalDate through = validity.cappedThrough(grant.get(), scope);
        limits.add(Reason.EXPIRED, history.days().after(through));
        Decision.Granted made = grant.get().body();
        return new Outlook(
                scope,
                grant.get().id(),
                through,
                made.supervised(),
                decisions
                        .exception(question.person(), at, id -> true)
                        .map(f -> f.body().supervisor())
                        .orElse(null),
                made.countersigner() != null,
                limits);
    }

    private Instant end(Fact<Decision.Granted> grant, Scope scope) {
        return history.days().after(validity.cappedThrough(grant, scope));
    }

    private static Judgement withoutPolicy() {
        NeedResult none = NeedResult.unmet(
                Need.SCOPE_OPEN, "The register cannot be read, or no policy is in force: nothing can be decided.");
        return new Judgement(List.of(none), false, null, null, null, null, null);
    }
}
