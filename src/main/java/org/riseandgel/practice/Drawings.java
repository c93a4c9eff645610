package org.riseandgel.practice;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import org.jboss.logging.Logger;
import org.riseandgel.core.quantity.OutOfRangeException;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.BrokenContentException;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.ExerciseTemplate;

/**
 * Makes the numbers of stored draws again, from the very text they were drawn from. What was made is kept in memory: it
 * follows from version and seed alone and never changes, so every node may keep its own.
 */
@ApplicationScoped
class Drawings {
    private static final Logger LOG = Logger.getLogger(Drawings.class);
    private static final int TEMPLATES_KEPT = 500;
    private static final int DRAWS_KEPT = 2_000;

    private final CourseContent content;
    private final DrawStore store;
    private final Cache<Version, ExerciseTemplate> templates =
            Caffeine.newBuilder().maximumSize(TEMPLATES_KEPT).build();
    private final Cache<Numbers, DrawnExercise> draws =
            Caffeine.newBuilder().maximumSize(DRAWS_KEPT).build();

    Drawings(CourseContent content, DrawStore store) {
        this.content = content;
        this.store = store;
    }

    private record Version(String exercise, String version) {}

    private record Numbers(Version version, long seed) {}

    /** A good draw of the template, made from the seed or one that follows from it; it carries the seed to store. */
    DrawnExercise fresh(ExerciseTemplate template, long seed) {
        return content.exercises().drawer().draw(template, seed);
    }

    /** The draw with its numbers; empty when this version of the program can no longer make them. */
    Optional<DrawnExercise> of(String exercise, String version, String skill, long seed) {
        Version key = new Version(exercise, version);
        Numbers numbers = new Numbers(key, seed);
        DrawnExercise kept = draws.getIfPresent(numbers);
        if (kept != null) {
            return Optional.of(kept);
        }
        Optional<DrawnExercise> made = template(key, skill).flatMap(template -> again(template, seed));
        made.ifPresent(drawn -> draws.put(numbers, drawn));
        return made;
    }

    Optional<DrawnExercise> of(StoredDraw draw) {
        return of(draw.exercise(), draw.version(), draw.skill(), draw.seed());
    }

    private Optional<DrawnExercise> again(ExerciseTemplate template, long seed) {
        try {
            return Optional.of(content.exercises().drawer().again(template, seed));
        } catch (OutOfRangeException impossible) {
            LOG.errorf(impossible, "A stored draw of %s can no longer be made", template);
            return Optional.empty();
        }
    }

    private Optional<ExerciseTemplate> template(Version key, String skill) {
        ExerciseTemplate kept = templates.getIfPresent(key);
        if (kept != null) {
            return Optional.of(kept);
        }
        Optional<ExerciseTemplate> found = content.exercises()
                .find(key.exercise)
                .filter(current -> current.version().equals(key.version))
                .or(() -> stored(key, skill));
        found.ifPresent(template -> templates.put(key, template));
        return found;
    }

    private Optional<ExerciseTemplate> stored(Version key, String skill) {
        String path = "exercises/" + skill + "/" + key.exercise + ".yaml";
        return store.versionText(key.exercise, key.version).flatMap(text -> parsed(path, text));
    }

    private Optional<ExerciseTemplate> parsed(String path, String text) {
        try {
            return Optional.of(content.exercises().parse(path, text));
        } catch (BrokenContentException e) {
            LOG.errorf(e, "A stored version of %s can no longer be read", path);
            return Optional.empty();
        }
    }
}
