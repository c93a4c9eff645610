package org.riseandgel.platform.content;

import io.quarkus.runtime.util.ClassPathUtils;
import java.net.URL;
import java.nio.file.Path;

/**
 * The course that comes with the program, on the class path below {@code content}.
 *
 * <p>It is found by the one file that must be there, because not every class loader of a packaged program can name a
 * folder.
 */
final class PackedContent {
    private static final String ANCHOR = "content/lessons/course.yaml";

    private PackedContent() {}

    static ContentFiles read() {
        URL anchor = Thread.currentThread().getContextClassLoader().getResource(ANCHOR);
        if (anchor == null) {
            throw new IllegalStateException("The program was packed without its course: " + ANCHOR + " is missing.");
        }
        return ClassPathUtils.processAsPath(anchor, PackedContent::around);
    }

    private static ContentFiles around(Path courseFile) {
        Path lessons = courseFile.toAbsolutePath().getParent();
        return ContentSource.readBoth(lessons, lessons.resolveSibling("exercises"));
    }
}
