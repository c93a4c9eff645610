package org.riseandgel.practice;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/**
 * A standing as pages and boards show it.
 *
 * @param rung the rung of the ladder that is offered
 * @param lastVerdict name of the latest verdict; null before the first answer
 * @param firstDay the school day of the first answer; null before it
 * @param masteredOn the school day on which mastery was first reached; null before
 * @param returns when the skill comes back
 * @param toDo what single exercises leave to do or left lately
 */
public record StandingView(
        String skill,
        SkillState state,
        int answers,
        int rightAnswers,
        int days,
        Rung rung,
        int wrongInRow,
        Instant lastAt,
        String lastVerdict,
        LocalDate firstDay,
        LocalDate masteredOn,
        Returns returns,
        List<ToDo> toDo) {
    public StandingView {
        toDo = List.copyOf(toDo);
    }

    /** A skill without an answer. */
    public static StandingView none(String skill) {
        return of(skill, Standing.NONE, null, List.of());
    }

    static StandingView of(String skill, Standing standing, String lastVerdict, List<ToDo> toDo) {
        return new StandingView(
                skill,
                standing.state(),
                standing.answers(),
                standing.rightAnswers(),
                standing.days(),
                standing.ladder().offered(),
                standing.wrongInRow(),
                standing.lastAt(),
                lastVerdict,
                standing.firstDay(),
                standing.masteredOn(),
                standing.returns(),
                toDo);
    }

    /** The level of the exercises that are offered. */
    public int level() {
        return rung.level();
    }
}
