package org.riseandgel.exercise;

/**
 * One thing that is wrong in a content file.
 *
 * @param file path of the file
 * @param line line number, counted from 1
 * @param field where in the file, such as {@code draw.diameter.step}; empty when it concerns the file as a whole
 * @param message what is wrong and what would be right, in one or two sentences
 */
public record ContentProblem(String file, int line, String field, String message) {
    @Override
    public String toString() {
        return field.isEmpty()
                ? "%s:%d %s".formatted(file, line, message)
                : "%s:%d %s: %s".formatted(file, line, field, message);
    }
}
