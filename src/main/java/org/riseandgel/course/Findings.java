package org.riseandgel.course;

import java.util.ArrayList;
import java.util.List;
import org.riseandgel.exercise.ContentProblem;

/** Collects what is wrong with one file, so that everything is told in one go. */
final class Findings {
    private final String file;
    private final List<ContentProblem> problems = new ArrayList<>();

    Findings(String file) {
        this.file = file;
    }

    void add(int line, String field, String message) {
        ContentProblem problem = new ContentProblem(file, line, field, message);
        if (!problems.contains(problem)) {
            problems.add(problem);
        }
    }

    String file() {
        return file;
    }

    boolean isEmpty() {
        return problems.isEmpty();
    }

    List<ContentProblem> all() {
        return List.copyOf(problems);
    }
}
