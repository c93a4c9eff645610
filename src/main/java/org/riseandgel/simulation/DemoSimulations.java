package org.riseandgel.simulation;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.SchoolFounded;
import org.riseandgel.course.Content;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Simulation;
import org.riseandgel.course.Simulation.Choice;
import org.riseandgel.course.Simulation.Outcome;
import org.riseandgel.course.Simulation.Scene;

/** What invented people have played: one to a good end with a slip on the way, one who stopped halfway. */
@ApplicationScoped
class DemoSimulations {
    private static final int AFTER_PEOPLE = 210;
    private static final int SECONDS_PER_SCENE = 40;
    private static final int MANY = 30;

    private final CourseContent content;
    private final Simulations simulations;
    private final RunStore store;
    private final Clock clock;

    DemoSimulations(CourseContent content, Simulations simulations, RunStore store, Clock clock) {
        this.content = content;
        this.simulations = simulations;
        this.store = store;
        this.clock = clock;
    }

    /** A course of the school's own may have other simulations or none; then nobody played. */
    void fill(@Observes @Priority(AFTER_PEOPLE) SchoolFounded founded) {
        if (founded.demo()) {
            Content now = content.current();
            now.simulation("weigh-out").ifPresent(one -> play(DemoPeople.BASTIAN, one, 6, MANY, 3));
            now.simulation("spill").ifPresent(one -> play(DemoPeople.ESME, one, 1, 2, 3));
        }
    }

    /** The safe choice at each scene, except at one. */
    private void play(UUID person, Simulation simulation, int daysAgo, int most, int slipAt) {
        Instant at = clock.instant().minus(Duration.ofDays(daysAgo)).truncatedTo(ChronoUnit.SECONDS);
        Run begun = Run.fresh(person, simulation, false, at);
        store.add(begun);
        for (int number = 1; number <= most; number++) {
            Run run = store.load(person, begun.id()).orElseThrow();
            Optional<Scene> scene = run.isOpen() ? run.at(simulation) : Optional.empty();
            if (scene.isEmpty()) {
                return;
            }
            at = at.plusSeconds(SECONDS_PER_SCENE);
            simulations.choose(
                    run, number, choice(scene.get(), number == slipAt).key(), at);
        }
    }

    private static Choice choice(Scene scene, boolean slip) {
        return scene.choices().stream()
                .filter(choice -> choice.outcome() == (slip ? Outcome.SLIP : Outcome.SAFE))
                .findFirst()
                .orElse(scene.choices().get(0));
    }
}
