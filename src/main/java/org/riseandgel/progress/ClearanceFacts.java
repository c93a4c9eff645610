package org.riseandgel.progress;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.riseandgel.clearance.PersonRecord;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.StepSeen;

/** What the register says about a person, as the person's page shows it. The register decides; nothing is kept here. */
@ApplicationScoped
class ClearanceFacts {
    private final Register register;
    private final PersonRecord record;

    ClearanceFacts(Register register, PersonRecord record) {
        this.register = register;
        this.record = record;
    }

    /** An observed practical: when, who watched, and how many of its steps were done unprompted. */
    record Observation(Instant at, String observer, String checklist, long unprompted, int steps, boolean corrected) {}

    List<Register.BoardRow> standings(UUID person) {
        return register.standings(person);
    }

    /** The observed practicals of a person, the latest first. */
    List<Observation> observations(UUID person) {
        return record.of(person).stream()
                .filter(line -> line.said() instanceof Evidence.ObservationRecorded)
                .map(ClearanceFacts::observation)
                .toList();
    }

    private static Observation observation(PersonRecord.RecordLine line) {
        Evidence.ObservationRecorded said = (Evidence.ObservationRecorded) line.said();
        return new Observation(
                said.startedAt(),
                line.names().getOrDefault(said.observer(), "Somebody who left"),
                said.checklist().replace('-', ' '),
                said.steps().stream()
                        .filter(step -> step.outcome() == StepSeen.Outcome.UNPROMPTED)
                        .count(),
                said.steps().size(),
                line.corrected());
    }
}
