package org.riseandgel.clearance.pages;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.clearance.PersonRecord;
import org.riseandgel.clearance.rule.Checklist;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Policy;
import org.riseandgel.clearance.rule.StepSeen;

/**
 * A practical as the learner reads it before saying that it was seen.
 *
 * @param observer the observer's name
 */
public record OwnPractical(
        UUID id,
        String title,
        String observer,
        Instant startedAt,
        Instant endedAt,
        String place,
        boolean salt,
        int attempt,
        List<Step> steps,
        List<String> notes) {
    /** One step and how it went. */
    public record Step(String text, boolean critical, String outcome) {}

    /** Those among the lines about somebody that were not acknowledged yet. */
    static List<OwnPractical> waiting(List<PersonRecord.RecordLine> lines, Optional<Policy> policy) {
        Set<UUID> seen = lines.stream()
                .map(PersonRecord.RecordLine::said)
                .filter(Evidence.ObservationAcknowledged.class::isInstance)
                .map(said -> ((Evidence.ObservationAcknowledged) said).observation())
                .collect(Collectors.toSet());
        return lines.stream()
                .filter(line -> line.said() instanceof Evidence.ObservationRecorded
                        && !line.corrected()
                        && !seen.contains(line.id()))
                .map(line -> of(line, policy))
                .toList();
    }

    private static OwnPractical of(PersonRecord.RecordLine line, Optional<Policy> policy) {
        Evidence.ObservationRecorded said = (Evidence.ObservationRecorded) line.said();
        Optional<Checklist> list = policy.flatMap(one -> one.checklist(said.checklist()));
        Map<String, String> texts = list.map(Checklist::steps).orElse(List.of()).stream()
                .collect(Collectors.toMap(Checklist.Step::id, Checklist.Step::text));
        return new OwnPractical(
                line.id(),
                list.map(Checklist::title).orElse(said.checklist()),
                line.names().getOrDefault(said.observer(), "Unknown person"),
                said.startedAt(),
                said.endedAt(),
                said.place(),
                said.material() == Evidence.ObservationRecorded.Material.SALT,
                said.attempt(),
                said.steps().stream().map(step -> step(step, texts)).toList(),
                line.notes());
    }

    private static Step step(StepSeen seen, Map<String, String> texts) {
        return new Step(
                texts.getOrDefault(seen.step(), seen.step()),
                seen.critical(),
                RegisterExtensions.outcomeWord(seen.outcome()));
    }
}
