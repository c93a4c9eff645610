package org.riseandgel.exercise;

/** A text file of the course: its path with forward slashes, such as {@code exercises/weighing/one-batch.yaml}. */
public record SourceFile(String path, String text) {
    /** The last part of the path. */
    public String name() {
        return path.substring(path.lastIndexOf('/') + 1);
    }

    /** The folder that holds the file, its own name only; empty at the top. */
    public String folder() {
        int end = path.lastIndexOf('/');
        return end < 0 ? "" : path.substring(path.lastIndexOf('/', end - 1) + 1, end);
    }
}
