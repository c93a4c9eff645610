package org.riseandgel.course;

import java.util.List;

/** A recall question with its options in the order in which they are shown, and the objectives that it tests. */
public record Question(String text, List<Option> options, List<String> objectives) {
    public Question {
        options = List.copyOf(options);
        objectives = List.copyOf(objectives);
    }

    /** An option: its words, whether it is the right one, and why it is or is not. */
    public record Option(String text, boolean right, String why) {}

    /** The right option. */
    public Option right() {
        return options.stream().filter(Option::right).findFirst().orElseThrow();
    }
}
