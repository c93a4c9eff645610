package org.riseandgel.practice;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.ExerciseTemplate;

/**
 * A draw with the answers given to it so far, and where its person stands in its skill and with its exercise at that same
 * moment.
 *
 * @param setting how the draw came about and what was said to it before the answer
 * @param paces how fast the person's latest answers to anything were, newest first
 * @param askedInCheck whether an open check of the person asks the same exercise
 */
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
        Standing standing,
        ExerciseStanding withExercise,
        Setting setting,
        List<FastGuess.Pace> paces,
        boolean askedInCheck) {

    /**
     * How a draw came about.
     *
     * @param withPlan whether the plan of the working is shown
     * @param asksEstimate whether an estimate comes first; null where none makes sense
     * @param estimate exponent of the decade that was chosen; null before that
     * @param lookedUp whether the worked example of the exercise was opened while the draw was
     * @param session the session it is an item of; null outside of one
     * @param number its place in the session, from 1; null outside of one
     * @param items how many items the session has; null outside of one
     */
    record Setting(
            boolean withPlan,
            Boolean asksEstimate,
            Integer estimate,
            boolean lookedUp,
            UUID session,
            Integer number,
            Integer items) {
        static final Setting PLAIN = new Setting(false, null, null, false, null, null, null);

        /** Whether an estimate has to be asked before anything else. */
        boolean wantsEstimate() {
            return Boolean.TRUE.equals(asksEstimate) && estimate == null;
        }

        boolean isMixed() {
            return session != null;
        }
    }

    /** A new draw, not yet stored. */
    static StoredDraw fresh(UUID person, DrawnExercise drawn, Instant now) {
        return fresh(person, drawn, now, Setting.PLAIN);
    }

    /** A new draw that came about like this, not yet stored. */
    static StoredDraw fresh(UUID person, DrawnExercise drawn, Instant now, Setting setting) {
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
                Standing.NONE,
                ExerciseStanding.NONE,
                setting,
                List.of(),
                false);
    }

    /** The rung of the ladder it was drawn on. */
    Rung rung() {
        return Rung.ofDraw(level, setting.withPlan());
    }

    /** Whether answers count as helped: a hint is open, or the worked example was looked up. */
    boolean isHelped() {
        return hintsShown > 0 || setting.lookedUp();
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
