package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Whether a clearance may be granted or given back now, and whether one that was still stands on what it rests on. */
final class DecisionRule {
    private static final Predicate<UUID> ANY = id -> true;

    private final History history;
    private final ClearanceRule clearances;
    private final Qualifications qualifications;
    private final Validity validity;

    DecisionRule(History history, ClearanceRule clearances) {
        this.history = history;
        this.clearances = clearances;
        this.qualifications = new Qualifications(history);
        this.validity = new Validity(history);
    }

    Judgement grant(Proposal proposal, Policy policy, Instant at) {
        Optional<Scope> open = history.openScopes(at).stream()
                .filter(scope -> scope.id().equals(proposal.scope()))
                .findFirst();
        if (open.isEmpty()) {
            NeedResult none = NeedResult.unmet(Need.SCOPE_OPEN, "There is no such scope, or it is closed.");
            return new Judgement(List.of(none), false, null, null, null, null, policy.version());
        }
        Scope scope = open.get();
        Optional<Fact<Decision.Granted>> before = history.grant(proposal.person(), scope.id(), at);
        List<NeedResult> needs = new ArrayList<>();
        needs.add(NeedResult.met(Need.SCOPE_OPEN, "The scope is in use."));
        needs.addAll(evidence(proposal, policy, scope, before, at, ANY));
        needs.addAll(decider(proposal, policy, at));
        needs.add(notSuspended(proposal.person(), scope, at));
        boolean single = isSingle(proposal, policy, at);
        Optional<Fact<Evidence.AgeException>> exception = exception(proposal.person(), at, ANY);
        return new Judgement(
                needs,
                single,
                exception.map(f -> f.body().supervisor()).orElse(null),
                validity.through(
                        policy,
                        new Validity.Terms(
                                scope,
                                single,
                                exception.map(f -> f.body().through()).orElse(null)),
                        before.filter(g -> clearances.isUndone(g, scope, at).isEmpty()),
                        at),
                before.map(Fact::id).orElse(null),
                history.sheet(scope.substance(), at)
                        .map(f -> f.body().revision())
                        .orElse(null),
                policy.version());
    }

    /**
     * Whether the named evidence carries the grant under a policy, and nothing else that is known now of the time before
     * it stands against it.
     */
    boolean carries(Fact<Decision.Granted> grant, Policy policy) {
        Decision.Granted made = grant.body();
        Instant at = grant.effective();
        Optional<Scope> scope = history.openScopes(at).stream()
                .filter(one -> one.id().equals(made.scope()))
                .findFirst();
        Optional<Fact<Decision.Granted>> before =
                History.last(history.about(made.person(), Decision.Granted.class, at).stream()
                        .filter(f -> f.body().scope().equals(made.scope()) && f.number() < grant.number())
                        .toList());
        Proposal proposal =
                new Proposal(made.person(), made.scope(), made.decider(), made.pool(), made.countersigner() != null);
        boolean minor = history.age(made.person(), at) == Ages.Age.UNDER_18;
        return scope.isPresent()
                && (!minor || made.supervised())
                && Stream.<Predicate<UUID>>of(made.evidence()::contains, ANY)
                        .flatMap(counts -> evidence(proposal, policy, scope.get(), before, at, counts).stream())
                        .allMatch(NeedResult::met)
                && decider(proposal, policy, at).stream().allMatch(NeedResult::met);
    }

    /** Whether the grant still stands, under the policy that was in force when it was made. */
    boolean stands(Fact<Decision.Granted> grant) {
        return history.policy(grant.effective())
                .filter(policy -> policy.version().equals(grant.body().policy()))
                .filter(policy -> carries(grant, policy))
                .isPresent();
    }

    Judgement reinstatement(Proposal proposal, Policy policy, Instant at) {
        Optional<Scope> known = history.scope(proposal.scope());
        if (known.isEmpty()) {
            NeedResult none = NeedResult.unmet(Need.SCOPE_OPEN, "There is no such scope.");
            return new Judgement(List.of(none), false, null, null, null, null, policy.version());
        }
        Scope scope = known.get();
        Question question = Question.about(proposal.person(), scope);
        List<Instant> since = clearances.suspendedSince(question, scope, at);
        Instant after = since.stream().max(Instant::compareTo).orElse(at);
        List<NeedResult> needs = new ArrayList<>();
        needs.add(
                since.isEmpty()
                        ? NeedResult.unmet(Need.SUSPENDED, "Nothing is suspended in this scope.")
                        : NeedResult.met(Need.SUSPENDED, "Suspended."));
        needs.addAll(practical(proposal, policy, scope, after, at, ANY));
        needs.add(
                clearances.missesDelta(question, scope, at)
                        ? NeedResult.unmet(Need.DELTA_DONE, "A delta training is overdue; it comes first.")
                        : NeedResult.met(Need.DELTA_DONE, "No delta training is overdue."));
        needs.addAll(decider(proposal, policy, at));
        return new Judgement(needs, isSingle(proposal, policy, at), null, null, null, null, policy.version());
    }

    /** Whether the named practical carries the reinstatement, for suspensions up to some instant. */
    boolean lifts(Fact<Decision.Reinstated> lifted, Instant suspended) {
        Decision.Reinstated made = lifted.body();
        Proposal proposal =
                new Proposal(made.person(), made.scope(), made.decider(), null, made.countersigner() != null);
        Instant at = lifted.effective();
        Optional<Policy> policy = history.policy(at).filter(p -> p.version().equals(made.policy()));
        Optional<Scope> scope = history.scope(made.scope());
        return policy.isPresent()
                && scope.isPresent()
                && Stream.<Predicate<UUID>>of(made.evidence()::contains, ANY)
                        .flatMap(counts ->
                                practical(proposal, policy.get(), scope.get(), suspended, at, counts).stream())
                        .allMatch(NeedResult::met)
                && decider(proposal, policy.get(), at).stream().allMatch(NeedResult::met);
    }

    /** The vocational exception that holds: the newest one, through its last day. */
    Optional<Fact<Evidence.AgeException>> exception(UUID person, Instant at, Predicate<UUID> counts) {
        if (history.age(person, at) != Ages.Age.UNDER_18) {
            return Optional.empty();
        }
        return History.last(history.about(person, Evidence.AgeException.class, at).stream()
                        .filter(f -> counts.test(f.id()))
                        .toList())
                .filter(f -> at.isBefore(history.days().after(f.body().through())))
                .filter(f ->
                        !person.equals(f.body().by()) && !person.equals(f.body().supervisor()));
    }

    private List<NeedResult> evidence(
            Proposal proposal,
            Policy policy,
            Scope scope,
            Optional<Fact<Decision.Granted>> before,
            Instant at,
            Predicate<UUID> counts) {
        EvidenceSearch search = new EvidenceSearch(history, policy, proposal.person(), scope, at, counts);
        Instant fresh = before.map(Fact::effective).orElse(Instant.MIN);
        return List.of(
                age(proposal.person(), scope, at, counts),
                search.training(),
                search.knowledge(proposal.pool(), fresh),
                search.observation(fresh),
                search.ppe(),
                search.sheetRead(),
                search.respirator(),
                search.fit());
    }

    private List<NeedResult> practical(
            Proposal proposal, Policy policy, Scope scope, Instant after, Instant at, Predicate<UUID> counts) {
        EvidenceSearch search = new EvidenceSearch(history, policy, proposal.person(), scope, at, counts);
        return List.of(search.observation(after), search.respirator(), search.fit());
    }

    private NeedResult age(UUID person, Scope scope, Instant at, Predicate<UUID> counts) {
        Ages.Age age = history.age(person, at);
        if (age == Ages.Age.ADULT) {
            return NeedResult.met(Need.AGE, "Of age.");
        }
        if (age == Ages.Age.UNKNOWN) {
            return NeedResult.unmet(Need.AGE, "The age is not known.");
        }
        Optional<Fact<Evidence.AgeException>> exception = exception(person, at, counts);
        if (exception.isEmpty()) {
            return NeedResult.unmet(Need.AGE, "Under 18, and no exception for vocational training holds.");
        }
        UUID supervisor = exception.get().body().supervisor();
        return history.age(supervisor, at) == Ages.Age.ADULT
                        && clearances
                                .standing(Question.about(supervisor, scope), at)
                                .isCleared()
                ? NeedResult.met(
                        Need.AGE, "Under 18: supervised only.", exception.get().id())
                : NeedResult.unmet(Need.AGE, "The named supervisor is not cleared for all of this scope.");
    }

    private List<NeedResult> decider(Proposal proposal, Policy policy, Instant at) {
        boolean self = proposal.person().equals(proposal.decider());
        boolean qualified = !self && qualifications.holds(proposal.decider(), Act.DECIDE, at);
        boolean apart = !self && !tookPart(proposal, policy, at);
        return List.of(
                qualified
                        ? NeedResult.met(Need.DECIDER_QUALIFIED, "The decider is qualified today.")
                        : NeedResult.unmet(
                                Need.DECIDER_QUALIFIED, "The decider has no qualification to decide that holds today."),
                apart || isSingle(proposal, policy, at)
                        ? NeedResult.met(
                                Need.SEPARATION,
                                apart ? "The decider took no part." : "Single-instructor decision, countersigned.")
                        : NeedResult.unmet(
                                Need.SEPARATION,
                                "The decider is the learner, or trained or observed this learner in the last %d months."
                                        .formatted(policy.periods().separationMonths())));
    }

    private boolean isSingle(Proposal proposal, Policy policy, Instant at) {
        return policy.singleInstructor()
                && proposal.countersigned()
                && !proposal.person().equals(proposal.decider());
    }

    private boolean tookPart(Proposal proposal, Policy policy, Instant at) {
        return new Participation(history, proposal.person())
                .has(proposal.decider(), policy.periods().separationMonths(), at);
    }

    private NeedResult notSuspended(UUID person, Scope scope, Instant at) {
        return clearances
                        .suspendedSince(Question.about(person, scope), scope, at)
                        .isEmpty()
                ? NeedResult.met(Need.NOT_SUSPENDED, "Not suspended.")
                : NeedResult.unmet(Need.NOT_SUSPENDED, "Suspended: reinstate first.");
    }
}
