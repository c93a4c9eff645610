package org.riseandgel.practice;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.ExerciseTemplate;

/** A draw with the answers given to it so far, and the standing of its person in its skill at that same moment. */
record StoredDraw(
        UUID id,
        UUID person,
        String exercise,
        String version,
        String skill,
        int level,
        long seed,
        Instant drawnAt,
        Instant finishedAt,
        int hintsShown,
        List<StoredAnswer> answers,
        Standing standing) {

    /** A new draw, not yet stored. */
    static StoredDraw fresh(UUID person, DrawnExercise drawn, Instant now) {
        ExerciseTemplate template = drawn.template();
        return new StoredDraw(
                UUID.randomUUID(),
                person,
                template.id(),
                template.version(),
                template.skill(),
                template.level(),
                drawn.seed(),
                now,
                null,
                0,
                List.of(),
                Standing.NONE);
    }

    boolean isFinished() {
        return finishedAt != null;
    }

    /** The number of the part that is asked now, if the draw is not finished. */
    int nextPart() {
        return answers.size();
    }

    /** The stored answer to a part. */
    Optional<StoredAnswer> answer(int part) {
        return part >= 0 && part < answers.size() ? Optional.of(answers.get(part)) : Optional.empty();
    }

    /** When the part that is asked now could first be seen: with the draw, or with the verdict on the part before. */
    Instant nextShownAt() {
        return answers.isEmpty() ? drawnAt : answers.get(answers.size() - 1).answeredAt();
    }

    /** Names the draw only: the seed must not slip into a log. */
    @Override
    public String toString() {
        return "draw " + id;
    }
}
