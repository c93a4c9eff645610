package org.riseandgel.exercise;

import java.util.List;
import java.util.stream.Collectors;

/** A content file that had to be good is not; it carries everything that is wrong with it. */
public final class BrokenContentException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<ContentProblem> problems;

    public BrokenContentException(List<ContentProblem> problems) {
        super(problems.stream().map(ContentProblem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** What is wrong. */
    public List<ContentProblem> problems() {
        return problems;
    }
}
