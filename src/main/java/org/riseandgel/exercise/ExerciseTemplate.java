package org.riseandgel.exercise;

import java.util.List;
import java.util.Optional;

/** An exercise before it is drawn, as read from one file and checked. */
public sealed interface ExerciseTemplate permits NumericTemplate, ChoiceTemplate {
    /** How the title of an exercise begins that shows a wrong working: nobody takes it for an example. */
    String WRONG_WORKING = "Find the slip: ";

    /** What every kind of exercise has. */
    Head head();

    /** Which kind it is. */
    ExerciseKind kind();

    /**
     * What every kind of exercise has.
     *
     * @param file the file it was read from, followed by the figures it shows; that text rebuilds the template
     * @param version the first 16 hexadecimal digits of the SHA-256 of that text
     * @param level 1 walks through the steps or asks to recall, 2 is bare, 3 is a whole job
     * @param critical whether a wrong answer could hurt somebody at the bench
     * @param objectives ids of the objectives of the course that it tests
     * @param atBench what is done at the bench with the salt itself; empty for everything that is done at a desk
     */
    record Head(
            SourceFile file,
            String version,
            String id,
            String title,
            String skill,
            int level,
            boolean critical,
            List<String> objectives,
            Optional<BenchWork> atBench,
            String story,
            List<String> hints,
            String source) {
        public Head {
            objectives = List.copyOf(objectives);
            hints = List.copyOf(hints);
        }

        /** The exercise's id and version, which with a seed say everything about a draw. */
        @Override
        public String toString() {
            return id + "@" + version;
        }
    }

    /** The text that rebuilds the template, with the path of its file. */
    default SourceFile file() {
        return head().file();
    }

    /** The version of that text. */
    default String version() {
        return head().version();
    }

    /** The file's name without its ending. */
    default String id() {
        return head().id();
    }

    /** The title for people. */
    default String title() {
        return head().title();
    }

    /** Whether it shows a wrong working and asks where it went wrong. */
    default boolean showsWrongWorking() {
        return title().startsWith(WRONG_WORKING);
    }

    /** The skill it practises. */
    default String skill() {
        return head().skill();
    }

    /** 1 walks through the steps or asks to recall, 2 is bare, 3 is a whole job. */
    default int level() {
        return head().level();
    }

    /** Whether a wrong answer could hurt somebody at the bench. */
    default boolean critical() {
        return head().critical();
    }

    /** Ids of the objectives of the course that it tests. */
    default List<String> objectives() {
        return head().objectives();
    }

    /** What is done at the bench with the salt itself; empty for everything that is done at a desk. */
    default Optional<BenchWork> atBench() {
        return head().atBench();
    }

    /** The story, with names of drawn values where it has any. */
    default String story() {
        return head().story();
    }

    /** The hints, from the gentle to the plain. */
    default List<String> hints() {
        return head().hints();
    }

    /** Where facts and amounts come from. */
    default String source() {
        return head().source();
    }
}
