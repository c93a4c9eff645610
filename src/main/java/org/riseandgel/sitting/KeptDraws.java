package org.riseandgel.sitting;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.enterprise.context.ApplicationScoped;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.ExerciseTemplate;

/** Makes the items of sittings again, from the very text they were drawn from and their stored seed. */
@ApplicationScoped
class KeptDraws {
    private static final int TEMPLATES_KEPT = 500;

    private final CourseContent content;
    private final SittingStore store;
    private final Cache<String, ExerciseTemplate> templates =
            Caffeine.newBuilder().maximumSize(TEMPLATES_KEPT).build();

    KeptDraws(CourseContent content, SittingStore store) {
        this.content = content;
        this.store = store;
    }

    /** A good draw of the template, made from the seed or one that follows from it; it carries the seed to store. */
    DrawnExercise fresh(ExerciseTemplate template, long seed) {
        return content.exercises().drawer().draw(template, seed);
    }

    /**
     * The item as it was drawn.
     *
     * @throws IllegalStateException when its text is not stored, which the database does not allow
     */
    DrawnExercise of(StoredItem item) {
        ExerciseTemplate template = templates.get(item.exercise() + "@" + item.version(), key -> template(item));
        return content.exercises().drawer().again(template, item.seed());
    }

    private ExerciseTemplate template(StoredItem item) {
        return content.exercises()
                .find(item.exercise())
                .filter(current -> current.version().equals(item.version()))
                .orElseGet(() -> stored(item));
    }

    private ExerciseTemplate stored(StoredItem item) {
        String path = "exercises/" + item.skill() + "/" + item.exercise() + ".yaml";
        return store.versionText(item.exercise(), item.version())
                .map(text -> content.exercises().parse(path, text))
                .orElseThrow(() -> new IllegalStateException("the text of " + path + " is not stored"));
    }
}
