package org.riseandgel.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.riseandgel.course.Simulation.Choice;
import org.riseandgel.course.Simulation.Outcome;
import org.riseandgel.course.Simulation.Scene;

/** The simulations that come with the course: what any of them must have. */
class RealSimulationsTest {
    private static final List<Simulation> ALL = RealContent.now().simulations();

    @Test
    void thereIsAWeighOutAndASpill() {
        assertThat(ALL).extracting(Simulation::id).containsExactlyInAnyOrder("weigh-out", "spill");
        assertThat(ALL).extracting(Simulation::skill).containsOnly("safe-handling");
    }

    @Test
    void theSafeWayLeadsToAGoodEndAndNoHarmfulOneDoes() {
        for (Simulation simulation : ALL) {
            Scene scene = simulation.first();
            for (int i = 0; i < 20 && !scene.isEnding(); i++) {
                scene = simulation.scene(of(scene, Outcome.SAFE).to()).orElseThrow();
            }
            assertThat(scene.id()).as(simulation.id()).isEqualTo("done");
            choices(simulation)
                    .filter(choice -> choice.outcome() == Outcome.HARM)
                    .forEach(choice -> {
                        Scene end = simulation.scene(choice.to()).orElseThrow();
                        assertThat(end.isEnding()).as(choice.text()).isTrue();
                        assertThat(end.id()).as(choice.text()).isNotEqualTo("done");
                        assertThat(end.text()).contains("In the room", "Look at the choice that led here");
                    });
        }
    }

    @Test
    void neitherPlaceNorLengthTellsTheSafeChoice() {
        List<Scene> scenes = ALL.stream()
                .flatMap(simulation -> simulation.scenes().stream())
                .filter(scene -> !scene.isEnding())
                .toList();
        long first = scenes.stream()
                .filter(scene -> scene.choices().get(0).outcome() == Outcome.SAFE)
                .count();
        long last = scenes.stream()
                .filter(scene -> scene.choices().get(scene.choices().size() - 1).outcome() == Outcome.SAFE)
                .count();
        assertThat(first).isBetween(1L, scenes.size() * 2L / 3);
        assertThat(last).isBetween(1L, scenes.size() * 2L / 3);
    }

    @Test
    void eachSaysThatTheDataSheetDecides() {
        for (Simulation simulation : ALL) {
            String all = simulation.scenes().stream()
                    .map(scene -> scene.text()
                            + (scene.caution() == null ? "" : scene.caution().text()))
                    .reduce("", String::concat);
            assertThat(all).contains("safety data sheet", "decide");
            assertThat(simulation.scenes().stream().filter(scene -> scene.caution() != null))
                    .hasSizeGreaterThanOrEqualTo(2);
        }
        assertThat(RealContent.now().simulation("weigh-out").orElseThrow().about())
                .contains("observed practical");
    }

    private static Choice of(Scene scene, Outcome outcome) {
        return scene.choices().stream()
                .filter(choice -> choice.outcome() == outcome)
                .findFirst()
                .orElseThrow();
    }

    private static java.util.stream.Stream<Choice> choices(Simulation simulation) {
        return simulation.scenes().stream().flatMap(scene -> scene.choices().stream());
    }
}
