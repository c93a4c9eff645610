package org.riseandgel.exercise;

import java.util.Optional;

/** A value of an exercise by its place: a drawn one, a result of a work, or a step of a work's working. */
public sealed interface ValueRef {
    /** A drawn value: "diameter". */
    record Drawn(String name) implements ValueRef {
        @Override
        public String toString() {
            return name;
        }
    }

    /** A result or a step of a work. */
    sealed interface Worked extends ValueRef {
        /** The work's name in the exercise. */
        String work();

        /** The result's name, or the step's id. */
        String name();
    }

    /** A result: "stick.markHeight". */
    record OfResult(String work, String name) implements Worked {
        @Override
        public String toString() {
            return work + "." + name;
        }
    }

    /** A step of the working: "stick.step.area". */
    record OfStep(String work, String name) implements Worked {
        @Override
        public String toString() {
            return work + ".step." + name;
        }
    }

    /** Reads the notation of exercise files; nothing when it is none of the three. */
    static Optional<ValueRef> parse(String text) {
        String[] parts = text.split("\\.", -1);
        for (String part : parts) {
            if (part.isEmpty()) {
                return Optional.empty();
            }
        }
        if (parts.length == 3 && parts[1].equals("step")) {
            return Optional.of(new OfStep(parts[0], parts[2]));
        }
        return switch (parts.length) {
            case 1 -> Optional.of(new Drawn(parts[0]));
            case 2 -> Optional.of(new OfResult(parts[0], parts[1]));
            default -> Optional.empty();
        };
    }
}
