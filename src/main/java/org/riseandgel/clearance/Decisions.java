package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.clearance.ledger.Histories;
import org.riseandgel.clearance.rule.ClearanceRule;
import org.riseandgel.clearance.rule.Decision;
import org.riseandgel.clearance.rule.Event;
import org.riseandgel.clearance.rule.Fact;
import org.riseandgel.clearance.rule.Judgement;
import org.riseandgel.clearance.rule.Note;
import org.riseandgel.clearance.rule.Policy;
import org.riseandgel.clearance.rule.Proposal;
import org.riseandgel.clearance.rule.Trigger;

/**
 * What is decided about people. Each decision is one transaction that nobody else's line comes into: it reads the evidence,
 * asks the rule and writes. Of two at one moment the second sees the first. One person takes away; two are needed to give.
 */
@ApplicationScoped
public class Decisions {
    private final Scribe scribe;
    private final KnowledgeEvidence knowledge;

    Decisions(Scribe scribe, KnowledgeEvidence knowledge) {
        this.scribe = scribe;
        this.knowledge = knowledge;
    }

    /**
     * What became of a decision that gives.
     *
     * @param event its line; also a refusal is one
     */
    public record Outcome(boolean given, UUID event, Judgement judgement) {}

    /** Whether this decider may grant now, precondition by precondition; sittings not written down yet count. */
    @Transactional
    public Judgement mayGrant(UUID decider, UUID person, UUID scope, boolean countersigned) {
        Instant at = scribe.now();
        Histories.Known known = scribe.knownWithSittings(person, decider);
        return mayGrant(known, new Proposal(person, scope, decider, pool(known, at), countersigned), at);
    }

    /** The rule and, beside it, that whoever decides did not write down what it rests on. */
    private static Judgement mayGrant(Histories.Known known, Proposal proposal, Instant at) {
        return Hands.apart(new ClearanceRule(known.history()).mayGrant(proposal, at), known, proposal.decider());
    }

    /**
     * Grants if every precondition is met; else the refusal goes on record.
     *
     * @param countersigner the outside countersigner of a single-instructor decision; null or blank for none
     */
    @Transactional
    public Outcome grant(UUID decider, UUID person, UUID scope, String countersigner) {
        scribe.needStaff(decider);
        scribe.needPerson(person, "person");
        Instant at = scribe.now();
        EvidenceDesk.needScope(scribe.known(person), scope);
        scribe.noteSittings(person);
        Histories.Known known = scribe.known(person, decider);
        boolean named = countersigner != null && !countersigner.isBlank();
        String pool = pool(known, at);
        Judgement judgement = mayGrant(known, new Proposal(person, scope, decider, pool, named), at);
        if (!judgement.isAllowed()) {
            return refused(decider, person, scope, at, judgement);
        }
        Note countersigned = judgement.singleInstructor() ? scribe.note(person, "countersigner", countersigner) : null;
        Event event = scribe.write(
                decider,
                at,
                new Decision.Granted(
                        person,
                        scope,
                        decider,
                        judgement.evidence(),
                        judgement.validThrough(),
                        judgement.sdsRevision(),
                        pool,
                        judgement.policy(),
                        judgement.supervisor() != null,
                        countersigned,
                        judgement.renews()));
        return new Outcome(true, event.id(), judgement);
    }

    /** Suspends at once; one instructor or safety lead is enough. */
    @Transactional
    public UUID suspend(UUID actor, UUID person, UUID scope, Trigger trigger, String reason) {
        return suspend(actor, person, scope, trigger, reason, null);
    }

    /**
     * Suspends from a moment on that has passed, as when it was signed on paper first.
     *
     * @param since when it began; null for now
     */
    @Transactional
    public UUID suspend(UUID actor, UUID person, UUID scope, Trigger trigger, String reason, Instant since) {
        scribe.needStaff(actor);
        scribe.needPerson(person, "person");
        if (trigger == null) {
            throw RegisterProblem.with("trigger", "Choose what it is about.");
        }
        Instant at = scribe.happened(since, "since");
        if (scope != null) {
            EvidenceDesk.needScope(scribe.known(person), scope);
        }
        return scribe.write(
                        actor,
                        at,
                        new Decision.Suspended(person, scope, actor, trigger, scribe.note(person, "reason", reason)))
                .id();
    }

    /** Whether this decider may give back now, precondition by precondition. */
    @Transactional
    public Judgement mayReinstate(UUID decider, UUID person, UUID scope, boolean countersigned) {
        Instant at = scribe.now();
        Histories.Known known = scribe.known(person, decider);
        return mayReinstate(known, new Proposal(person, scope, decider, null, countersigned), at);
    }

    private static Judgement mayReinstate(Histories.Known known, Proposal proposal, Instant at) {
        return Hands.apart(new ClearanceRule(known.history()).mayReinstate(proposal, at), known, proposal.decider());
    }

    /** Gives back after a new practical, if every precondition is met; nothing is written if not. */
    @Transactional
    public Outcome reinstate(UUID decider, UUID person, UUID scope, String countersigner, String reason) {
        scribe.needStaff(decider);
        scribe.needPerson(person, "person");
        Instant at = scribe.now();
        Histories.Known known = scribe.known(person, decider);
        EvidenceDesk.needScope(known, scope);
        boolean named = countersigner != null && !countersigner.isBlank();
        Judgement judgement = mayReinstate(known, new Proposal(person, scope, decider, null, named), at);
        if (!judgement.isAllowed()) {
            return new Outcome(false, null, judgement);
        }
        Event event = scribe.write(
                decider,
                at,
                new Decision.Reinstated(
                        person,
                        scope,
                        decider,
                        judgement.evidence(),
                        judgement.policy(),
                        judgement.singleInstructor() ? scribe.note(person, "countersigner", countersigner) : null,
                        scribe.note(person, "reason", reason)));
        return new Outcome(true, event.id(), judgement);
    }

    /** Withdraws; only a new grant gives it back. */
    @Transactional
    public UUID withdraw(UUID actor, UUID person, UUID scope, boolean forCause, String reason) {
        scribe.needStaff(actor);
        scribe.needPerson(person, "person");
        Instant at = scribe.now();
        if (scope != null) {
            EvidenceDesk.needScope(scribe.known(person), scope);
        }
        return scribe.write(
                        actor,
                        at,
                        new Decision.Withdrawn(person, scope, actor, forCause, scribe.note(person, "reason", reason)))
                .id();
    }

    /** The learner does not agree with a decision about themselves. */
    @Transactional
    public UUID appeal(UUID actor, UUID against, String reason) {
        Instant at = scribe.now();
        Histories.Known known = scribe.known(actor);
        boolean own = known.history()
                .fact(against)
                .filter(f -> f.body() instanceof Decision decision
                        && decision.person().equals(actor)
                        && !(decision instanceof Decision.AppealLodged))
                .isPresent();
        if (!own) {
            throw RegisterProblem.with("against", "Choose a decision about you.");
        }
        if (isWaiting(known, actor, against, at)) {
            throw RegisterProblem.with(
                    "against", "Your appeal against this is on record already and waits; once is enough.");
        }
        return scribe.write(actor, at, new Decision.AppealLodged(actor, against, scribe.note(actor, "reason", reason)))
                .id();
    }

    /** Decides an appeal; whoever was in the decision that it is against does not. Nothing else changes by it. */
    @Transactional
    public UUID decideAppeal(UUID decider, UUID person, UUID appeal, boolean upheld, String reason) {
        scribe.needStaff(decider);
        Instant at = scribe.now();
        Histories.Known known = scribe.known(person, decider);
        Fact<Decision.AppealLodged> lodged = known.history().about(person, Decision.AppealLodged.class, at).stream()
                .filter(f -> f.id().equals(appeal))
                .findFirst()
                .orElseThrow(() -> RegisterProblem.with("appeal", "There is no such appeal."));
        if (known.history().about(person, Decision.AppealDecided.class, at).stream()
                .anyMatch(f -> f.body().appeal().equals(appeal))) {
            throw RegisterProblem.with("appeal", "This appeal has been decided.");
        }
        if (decider.equals(person) || tookPart(known, lodged.body().against(), decider)) {
            throw RegisterProblem.with("decider", "Somebody who was not in the first decision decides the appeal.");
        }
        return scribe.write(
                        decider,
                        at,
                        new Decision.AppealDecided(
                                person, appeal, decider, upheld, scribe.note(person, "reason", reason)))
                .id();
    }

    private static boolean isWaiting(Histories.Known known, UUID person, UUID against, Instant at) {
        Set<UUID> decided = known.history().about(person, Decision.AppealDecided.class, at).stream()
                .map(f -> f.body().appeal())
                .collect(Collectors.toSet());
        return known.history().about(person, Decision.AppealLodged.class, at).stream()
                .anyMatch(f -> f.body().against().equals(against) && !decided.contains(f.id()));
    }

    private Outcome refused(UUID decider, UUID person, UUID scope, Instant at, Judgement judgement) {
        Event event = scribe.write(decider, at, new Decision.GrantRefused(person, scope, decider, judgement.unmet()));
        return new Outcome(false, event.id(), judgement);
    }

    private static boolean tookPart(Histories.Known known, UUID against, UUID decider) {
        return known.events().stream()
                .filter(event -> event.id().equals(against))
                .anyMatch(event -> decider.equals(event.recordedBy()) || decider.equals(deciderOf(event)));
    }

    private static UUID deciderOf(Event event) {
        if (event.body() instanceof Decision.Granted granted) {
            return granted.decider();
        }
        if (event.body() instanceof Decision.Reinstated reinstated) {
            return reinstated.decider();
        }
        return event.body() instanceof Decision.AppealDecided decided ? decided.decider() : null;
    }

    private String pool(Histories.Known known, Instant at) {
        return known.history()
                .policy(at)
                .map(Policy::knowledge)
                .map(Policy.Knowledge::check)
                .flatMap(knowledge::currentPool)
                .orElse(null);
    }
}
