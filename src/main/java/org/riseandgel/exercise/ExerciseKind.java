package org.riseandgel.exercise;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The kinds of exercise. The names in files stay: stored texts use them. */
public enum ExerciseKind {
    /** A number with its unit, worked out from drawn numbers. */
    NUMERIC("numeric", "Calculate", ""),
    /** One right option among several. */
    CHOOSE_ONE("choose-one", "Choose one", "Choose one."),
    /** Two or more right options among several. */
    CHOOSE_ALL("choose-all", "Choose all that apply", "Tick all that apply."),
    /** Steps to be put in their order. */
    PUT_IN_ORDER("put-in-order", "Put in order", "Give each step its number. Each number is used once."),
    /** A right side to be found for each left side. */
    MATCH("match", "Match", "Choose what belongs to each. An entry may be used more than once, or not at all.");

    private final String id;
    private final String title;
    private final String instruction;

    ExerciseKind(String id, String title, String instruction) {
        this.id = id;
        this.title = title;
        this.instruction = instruction;
    }

    /** The name in files. */
    public String id() {
        return id;
    }

    /** What it is, in words. */
    public String title() {
        return title;
    }

    /** How it is answered, in one sentence; empty for numbers, whose parts say it themselves. */
    public String instruction() {
        return instruction;
    }

    /** The kind of that name. */
    static Optional<ExerciseKind> byId(String id) {
        return Arrays.stream(values()).filter(kind -> kind.id.equals(id)).findFirst();
    }

    /** All names, for messages. */
    static String names() {
        return String.join(
                ", ", List.of(values()).stream().map(ExerciseKind::id).toList());
    }
}
