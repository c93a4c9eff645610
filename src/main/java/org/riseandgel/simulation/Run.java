package org.riseandgel.simulation;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.course.Simulation;
import org.riseandgel.course.Simulation.Outcome;

/**
 * One person's way through a simulation.
 *
 * @param timed whether the time of each scene is looked at
 * @param shownAt when the scene that is asked now was gone on to
 * @param endedAt when it came to an end or was left; null while it is open
 * @param ending the scene at which it ended; null while it is open, and when it was left
 */
public record Run(
        UUID id,
        UUID person,
        String simulation,
        String title,
        boolean timed,
        Instant begunAt,
        Instant shownAt,
        Instant endedAt,
        String ending,
        List<Step> steps) {
    public Run {
        steps = List.copyOf(steps);
    }

    /** A choice that was made, in the words that were shown. */
    public record Step(
            int number,
            String scene,
            String sceneTitle,
            String chosen,
            Outcome outcome,
            String consequence,
            String why,
            String leadsTo,
            Instant shownAt,
            Instant chosenAt,
            boolean late) {
        /** How many seconds it took. */
        public long seconds() {
            return chosenAt.getEpochSecond() - shownAt.getEpochSecond();
        }
    }

    static Run fresh(UUID person, Simulation simulation, boolean timed, Instant now) {
        return new Run(
                UUID.randomUUID(), person, simulation.id(), simulation.title(), timed, now, now, null, null, List.of());
    }

    public boolean isOpen() {
        return endedAt == null;
    }

    public int nextNumber() {
        return steps.size() + 1;
    }

    Optional<Step> step(int number) {
        return number >= 1 && number <= steps.size() ? Optional.of(steps.get(number - 1)) : Optional.empty();
    }

    /** The scene that it has come to; empty when the simulation no longer has it. */
    Optional<Simulation.Scene> at(Simulation now) {
        return steps.isEmpty()
                ? Optional.of(now.first())
                : now.scene(steps.get(steps.size() - 1).leadsTo());
    }

    public long safe() {
        return steps.stream().filter(step -> step.outcome() == Outcome.SAFE).count();
    }
}
