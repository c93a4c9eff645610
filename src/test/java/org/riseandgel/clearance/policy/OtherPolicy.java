package org.riseandgel.clearance.policy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.riseandgel.platform.content.ContentSource;

/** A school's folder in which the policy says something else than the one that comes with the course. */
public final class OtherPolicy {
    private static final Path OURS = Path.of("lessons", "clearance.yaml");

    private OtherPolicy() {}

    /** The course's policy with one passage replaced by another. */
    public static PolicyFile in(Path folder, String passage, String other) throws IOException {
        String text = Files.readString(OURS);
        if (!text.contains(passage)) {
            throw new IllegalArgumentException("the policy does not say: " + passage);
        }
        Files.createDirectories(folder.resolve("exercises"));
        Path file = folder.resolve(OURS);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text.replace(passage, other));
        return new PolicyFile(new ContentSource(Optional.of(folder.toString())));
    }
}
