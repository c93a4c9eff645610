package org.riseandgel.simulation;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Simulation;
import org.riseandgel.course.Simulation.Choice;
import org.riseandgel.course.Simulation.Scene;

/**
 * Playing a simulation: it is begun, a choice is made at each scene, and every choice is stored before its consequence is
 * shown. Nothing of it counts towards a skill or a clearance.
 */
@ApplicationScoped
class Simulations {
    private final CourseContent content;
    private final RunStore store;
    private final Clock clock;

    Simulations(CourseContent content, RunStore store, Clock clock) {
        this.content = content;
        this.store = store;
        this.clock = clock;
    }

    /** What became of a choice. */
    sealed interface Chosen {
        /** It is stored, now or since an earlier press. */
        record Stored(int step) implements Chosen {}

        /** There is no such choice at this scene; nothing is stored. */
        record Unknown() implements Chosen {}

        /** The run is at another scene, or over; nothing is stored. */
        record Elsewhere() implements Chosen {}
    }

    /** Begins a run, or takes up the open one; with "afresh" the open one is left. */
    UUID begin(UUID person, Simulation simulation, boolean timed, boolean afresh) {
        if (afresh) {
            store.leave(person, simulation.id(), now());
        }
        Run run = Run.fresh(person, simulation, timed, now());
        return store.add(run) ? run.id() : store.open(person, simulation.id()).orElseThrow();
    }

    /** Chooses at the scene of that number; empty when the run is not theirs. */
    Optional<Chosen> choose(UUID person, UUID run, int number, String key) {
        return store.load(person, run).map(found -> choose(found, number, key, now()));
    }

    Chosen choose(Run run, int number, String key, Instant now) {
        if (run.step(number).isPresent()) {
            return new Chosen.Stored(number);
        }
        Optional<Simulation> simulation = content.current().simulation(run.simulation());
        Optional<Scene> scene = simulation.flatMap(run::at);
        if (!run.isOpen() || number != run.nextNumber() || scene.isEmpty()) {
            return new Chosen.Elsewhere();
        }
        Optional<Choice> choice = scene.get().choice(key);
        if (choice.isEmpty()) {
            return new Chosen.Unknown();
        }
        String to = choice.get().to();
        boolean ends = simulation.get().scene(to).filter(Scene::isEnding).isPresent();
        store.choose(run, step(run, scene.get(), choice.get(), now), ends ? to : null);
        return new Chosen.Stored(number);
    }

    private static Run.Step step(Run run, Scene scene, Choice choice, Instant now) {
        boolean late = run.timed()
                && scene.seconds() > 0
                && Duration.between(run.shownAt(), now).getSeconds() > scene.seconds();
        return new Run.Step(
                run.nextNumber(),
                scene.id(),
                scene.title(),
                choice.text(),
                choice.outcome(),
                choice.consequence(),
                choice.why(),
                choice.to(),
                run.shownAt(),
                now,
                late);
    }

    /** Goes on to the next scene: from now on its time runs, where time is looked at. */
    void goOn(UUID person, UUID run) {
        store.goneOn(person, run, now());
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
