package org.riseandgel.bench;

import java.util.List;
import java.util.Optional;

/** What was read from a form or a file: the inputs, or else every problem that keeps them from being read. */
public record GivenReading(Optional<Given> given, List<FieldProblem> problems) {
    public GivenReading {
        problems = List.copyOf(problems);
        if (given.isPresent() != problems.isEmpty()) {
            throw new IllegalArgumentException("a reading has inputs or problems, never both and never neither");
        }
    }
}
