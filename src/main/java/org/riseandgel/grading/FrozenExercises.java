package org.riseandgel.grading;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.enterprise.context.ApplicationScoped;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.platform.sql.Sql;

/**
 * Exercises as they were when a set was published, with the set's narrower ranges. What was made is kept in memory: it
 * follows from version, ranges and seed alone and never changes.
 */
@ApplicationScoped
class FrozenExercises {
    private static final int TEMPLATES_KEPT = 500;
    private static final int DRAWS_KEPT = 2_000;

    private final CourseContent content;
    private final Sql sql;
    private final Cache<Exercise, ExerciseTemplate> templates =
            Caffeine.newBuilder().maximumSize(TEMPLATES_KEPT).build();
    private final Cache<Numbers, DrawnExercise> draws =
            Caffeine.newBuilder().maximumSize(DRAWS_KEPT).build();

    FrozenExercises(CourseContent content, Sql sql) {
        this.content = content;
        this.sql = sql;
    }

    /** An exercise in one version with narrower ranges. */
    record Exercise(String exercise, String version, String skill, String ranges) {}

    private record Numbers(Exercise exercise, long seed) {}

    /** A good draw, made from the seed or one that follows from it; it carries the seed to store. */
    DrawnExercise fresh(Exercise exercise, long seed) {
        return content.exercises().drawer().draw(template(exercise), seed);
    }

    /** The draw that a stored seed stands for. */
    DrawnExercise again(Exercise exercise, long seed) {
        return draws.get(
                new Numbers(exercise, seed),
                key -> content.exercises().drawer().again(template(key.exercise), key.seed));
    }

    /**
     * The exercise with its ranges.
     *
     * @throws IllegalStateException when its text is not stored, which the database does not allow
     */
    ExerciseTemplate template(Exercise exercise) {
        return templates.get(exercise, this::made);
    }

    private ExerciseTemplate made(Exercise exercise) {
        ExerciseTemplate whole = content.exercises()
                .find(exercise.exercise)
                .filter(current -> current.version().equals(exercise.version))
                .orElseGet(() -> stored(exercise));
        return Narrowing.parse(exercise.ranges).applied(whole);
    }

    private ExerciseTemplate stored(Exercise exercise) {
        String path = "exercises/" + exercise.skill + "/" + exercise.exercise + ".yaml";
        return sql.first(
                        "SELECT source_text FROM exercise_version WHERE exercise_id = ? AND version = ?",
                        row -> row.text("source_text"),
                        exercise.exercise,
                        exercise.version)
                .map(text -> content.exercises().parse(path, text))
                .orElseThrow(() -> new IllegalStateException("the text of " + path + " is not stored"));
    }
}
