package org.riseandgel.course;

import java.util.List;
import java.util.Optional;

/**
 * A piece of work played through on the page, scene by scene: at each scene something is chosen, and the choice says
 * what follows from it and why. It prepares for the observed practical and never replaces it.
 *
 * @param about what it is, in a sentence or two
 * @param skill the skill it belongs to
 * @param minutes how long it takes
 * @param scenes the first one first
 */
public record Simulation(String id, String title, String about, String skill, int minutes, List<Scene> scenes) {
    public Simulation {
        scenes = List.copyOf(scenes);
    }

    /** Where it begins. */
    public Scene first() {
        return scenes.get(0);
    }

    /** The scene of that id. */
    public Optional<Scene> scene(String scene) {
        return scenes.stream().filter(one -> one.id().equals(scene)).findFirst();
    }

    /** What a choice comes to. The names are stored and stay. */
    public enum Outcome {
        SAFE("safe", "Safe"),
        SLIP("slip", "Not the safe way"),
        HARM("harm", "Somebody could be hurt");

        private final String id;
        private final String words;

        Outcome(String id, String words) {
            this.id = id;
            this.words = words;
        }

        /** As the content file writes it. */
        public String id() {
            return id;
        }

        /** As the page says it. */
        public String words() {
            return words;
        }

        /** The icon beside the words. */
        public String icon() {
            return this == SAFE ? "right" : "wrong";
        }

        /** The outcome that the content file writes like this. */
        public static Optional<Outcome> byId(String id) {
            return List.of(values()).stream().filter(one -> one.id.equals(id)).findFirst();
        }
    }

    /**
     * A scene. One that ends the simulation has no choices.
     *
     * @param seconds about how long there would be in the room; 0 where nothing presses
     * @param caution what to mind here; null where nothing needs a signal word
     * @param choices in the order in which they are shown
     */
    public record Scene(String id, String title, String text, int seconds, Caution caution, List<Choice> choices) {
        public Scene {
            choices = List.copyOf(choices);
        }

        /** Whether the simulation is over here. */
        public boolean isEnding() {
            return choices.isEmpty();
        }

        /** The choice of that key. */
        public Optional<Choice> choice(String key) {
            return choices.stream().filter(one -> one.key().equals(key)).findFirst();
        }
    }

    /** A signal word with its title and text. */
    public record Caution(String word, String title, String text) {}

    /**
     * Something to do at a scene.
     *
     * @param key names it in the form; tells nothing about the outcome
     * @param consequence what follows from it
     * @param why why it is so
     * @param to the scene it leads to
     */
    public record Choice(String key, String text, Outcome outcome, String consequence, String why, String to) {}
}
