package org.riseandgel.clearance;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.clearance.ledger.Histories;
import org.riseandgel.clearance.rule.ClearanceRule;
import org.riseandgel.clearance.rule.Fact;
import org.riseandgel.clearance.rule.Question;
import org.riseandgel.clearance.rule.Status;
import org.riseandgel.sitting.ClearedSince;
import org.riseandgel.sitting.SittingHandedIn;

/**
 * Writes a sitting down as soon as it is handed in, so that a recall check with a critical item wrong suspends at once;
 * and tells who is cleared, since when, so that recall checks come.
 */
@ApplicationScoped
class SittingWatch implements ClearedSince {
    private final Scribe scribe;

    SittingWatch(Scribe scribe) {
        this.scribe = scribe;
    }

    void note(@Observes SittingHandedIn handedIn) {
        scribe.noteSittings(handedIn.person());
    }

    @Override
    public Optional<Instant> clearedSince(UUID person) {
        Instant now = scribe.latest();
        Histories.Known known = scribe.known(person);
        ClearanceRule rule = new ClearanceRule(known.history());
        return known.history().openScopes(now).stream()
                .filter(scope ->
                        rule.standing(Question.about(person, scope), now).status() != Status.NOT_CLEARED)
                .flatMap(scope -> known.history().grant(person, scope.id(), now).stream())
                .map(Fact::effective)
                .min(Instant::compareTo);
    }
}
