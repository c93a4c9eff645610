package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.clearance.ledger.Histories;
import org.riseandgel.clearance.policy.PolicyFile;
import org.riseandgel.clearance.policy.PolicyReader;
import org.riseandgel.clearance.rule.ClearanceRule;
import org.riseandgel.clearance.rule.Decision;
import org.riseandgel.clearance.rule.Fact;
import org.riseandgel.clearance.rule.Policy;
import org.riseandgel.clearance.rule.Question;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Status;
import org.riseandgel.exercise.ContentProblem;

/** Whose clearances another policy would no longer grant. */
@ApplicationScoped
public class WhatIf {
    private final Scribe scribe;
    private final PolicyFile file;

    WhatIf(Scribe scribe, PolicyFile file) {
        this.scribe = scribe;
        this.file = file;
    }

    /**
     * A clearance that holds now and would not pass.
     *
     * @param due the day by which it is renewed, after which it does not hold
     */
    public record NoLonger(UUID person, UUID scope, String scopeTitle, UUID grant, LocalDate due) {}

    /**
     * What putting the file's policy in force would do.
     *
     * @param current the version in force; empty when there is none
     * @param proposed the version of the file; empty when the file has problems
     */
    public record Preview(
            Optional<String> current, Optional<Policy> proposed, List<ContentProblem> problems, List<NoLonger> fallen) {
        /** Whether there is something to put in force. */
        public boolean isNew() {
            return proposed.isPresent() && !proposed.map(Policy::version).equals(current);
        }
    }

    /** Looks without changing anything. */
    @Transactional
    public Preview preview() {
        PolicyReader.Read read = file.read();
        Instant at = scribe.now();
        Histories.Known known = scribe.all();
        return new Preview(
                known.history().policy(at).map(Policy::version),
                read.policy(),
                read.problems(),
                read.policy().map(policy -> of(known, policy, at)).orElse(List.of()));
    }

    /** The clearances that hold at an instant and would not pass under a policy. */
    List<NoLonger> of(Histories.Known known, Policy policy, Instant at) {
        ClearanceRule rule = new ClearanceRule(known.history());
        LocalDate due = known.history().days().of(at).plusDays(policy.periods().renewalDueDays());
        List<NoLonger> fallen = new ArrayList<>();
        for (Scope scope : known.history().openScopes(at)) {
            for (UUID person : known.history().people()) {
                Optional<Fact<Decision.Granted>> grant = known.history().grant(person, scope.id(), at);
                if (grant.isPresent()
                        && rule.standing(Question.about(person, scope), at).status() != Status.NOT_CLEARED
                        && !rule.wouldPass(person, scope, policy, at)) {
                    fallen.add(new NoLonger(
                            person, scope.id(), scope.title(), grant.get().id(), due));
                }
            }
        }
        return fallen;
    }
}
