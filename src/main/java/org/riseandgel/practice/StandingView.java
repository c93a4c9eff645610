package org.riseandgel.practice;

import java.time.Instant;

/**
 * A standing as pages and boards show it.
 *
 * @param lastVerdict name of the latest verdict; null before the first answer
 */
public record StandingView(
        String skill,
        SkillState state,
        int answers,
        int rightAnswers,
        int days,
        int level,
        int wrongInRow,
        Instant lastAt,
        String lastVerdict) {

    /** A skill without an answer. */
    public static StandingView none(String skill) {
        return new StandingView(skill, SkillState.NOT_BEGUN, 0, 0, 0, 1, 0, null, null);
    }

    static StandingView of(String skill, Standing standing, String lastVerdict) {
        return new StandingView(
                skill,
                standing.state(),
                standing.answers(),
                standing.rightAnswers(),
                standing.days(),
                standing.ladder().level(),
                standing.wrongInRow(),
                standing.lastAt(),
                lastVerdict);
    }
}
