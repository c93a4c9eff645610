package org.riseandgel.clearance.ledger;

import java.util.HashSet;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.clearance.rule.Body;
import org.riseandgel.clearance.rule.Decision;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Keeping;

/** The people whose own lines decide what a line is worth: whom it is about, who trained, watched, decided, supervises. */
final class Parties {
    private Parties() {}

    static Set<UUID> of(Body said) {
        Set<UUID> people = new HashSet<>();
        said.subject().ifPresent(people::add);
        other(said, people);
        people.remove(null);
        return people;
    }

    private static void other(Body said, Set<UUID> people) {
        if (said instanceof Evidence.TrainingGiven training) {
            people.add(training.trainer());
        } else if (said instanceof Evidence.RespiratorTrained training) {
            people.add(training.trainer());
        } else if (said instanceof Evidence.DeltaDone delta) {
            people.add(delta.trainer());
        } else if (said instanceof Evidence.ObservationRecorded practical) {
            people.add(practical.observer());
        } else if (said instanceof Evidence.PpeShown shown) {
            people.add(shown.observer());
        } else if (said instanceof Evidence.AgeException exception) {
            people.add(exception.supervisor());
        } else if (said instanceof Decision.Granted granted) {
            people.add(granted.decider());
        } else if (said instanceof Decision.Reinstated reinstated) {
            people.add(reinstated.decider());
        } else if (said instanceof Keeping.Corrected corrected && corrected.replacement() != null) {
            people.addAll(of(corrected.replacement()));
        }
    }
}
