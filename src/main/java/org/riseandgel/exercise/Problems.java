package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.List;

/** Collects everything that is wrong in one file, so that its author sees it all in one go. */
public final class Problems {
    private final String file;
    private final List<ContentProblem> found = new ArrayList<>();

    public Problems(String file) {
        this.file = file;
    }

    /** Notes a problem at a line and field. */
    public void add(int line, String field, String message) {
        found.add(new ContentProblem(file, line, field, message));
    }

    /** Whether nothing was found so far. */
    public boolean none() {
        return found.isEmpty();
    }

    /** What was found, in the order in which it was found. */
    public List<ContentProblem> found() {
        return List.copyOf(found);
    }
}
