package org.riseandgel.platform.content;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Where the files of the course come from: the ones packed with the program, or a folder of the school's own that holds
 * {@code lessons} and {@code exercises}. The school's folder is read anew whenever something in it changes.
 */
@ApplicationScoped
public class ContentSource {
    private static final String LESSONS = "lessons";
    private static final String EXERCISES = "exercises";
    private static final Set<String> LESSON_TYPES = Set.of("md", "svg", "yaml");
    private static final Set<String> EXERCISE_TYPES = Set.of("yaml", "svg");

    private final Optional<Path> folder;

    @Inject
    public ContentSource(@ConfigProperty(name = "riseandgel.content-dir") Optional<String> contentDir) {
        this.folder = contentDir.map(Path::of);
    }

    /** Reads all files as they are now. */
    public ContentFiles read() {
        return folder.map(ContentSource::fromDisk).orElseGet(PackedContent::read);
    }

    /**
     * A text that changes when a file of the school's folder is added, changed or removed. It looks at names, sizes and
     * times only. Always the same for the files packed with the program, which cannot change while it runs.
     */
    public String fingerprint() {
        return folder.map(root -> FolderReader.stat(root.resolve(LESSONS)) + FolderReader.stat(root.resolve(EXERCISES)))
                .orElse("");
    }

    /** Which files these are, in words that begin a sentence. */
    public String where() {
        return folder.map(path -> "The course in " + path.toAbsolutePath())
                .orElse("The course packed with the program");
    }

    private static ContentFiles fromDisk(Path root) {
        if (!Files.isDirectory(root)) {
            String remedy = "does not exist; make it, with folders lessons and exercises in it, or take the setting"
                    + " riseandgel.content-dir out";
            return new ContentFiles(
                    List.of(), List.of(new ContentFault(root.toAbsolutePath().toString(), remedy)));
        }
        return readBoth(root.resolve(LESSONS), root.resolve(EXERCISES));
    }

    static ContentFiles readBoth(Path lessons, Path exercises) {
        return FolderReader.read(lessons, LESSONS, LESSON_TYPES)
                .and(FolderReader.read(exercises, EXERCISES, EXERCISE_TYPES));
    }
}
