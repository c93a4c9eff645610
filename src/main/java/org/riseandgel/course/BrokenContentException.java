package org.riseandgel.course;

import java.util.List;
import java.util.stream.Collectors;
import org.riseandgel.exercise.ContentProblem;

/** The content has problems and there is no earlier content to go on with. The message tells them all. */
public final class BrokenContentException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    BrokenContentException(String where, List<ContentProblem> problems) {
        super("%s cannot be used. Problems found: %d. Mend them and start again.%n%s"
                .formatted(where, problems.size(), lines(problems)));
    }

    static String lines(List<ContentProblem> problems) {
        return problems.stream().map(problem -> "  " + problem).collect(Collectors.joining("\n"));
    }
}
