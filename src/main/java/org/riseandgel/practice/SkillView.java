package org.riseandgel.practice;

import java.util.List;
import org.riseandgel.practice.SkillLists.SkillCard;

/**
 * A skill with where one person stands in it.
 *
 * @param stage number of the stage that teaches it
 * @param rungs the ladder from its foot; empty for a skill made of facts
 * @param returns when it comes back, in words; empty while it is first learned
 * @param mastery what mastery still wants, in words; empty once it was reached
 * @param example the exercise whose worked example stands for the skill; empty where there is nothing to work
 * @param held exercises that wait for their worked example to be seen
 * @param lessons lessons that teach it
 * @param simulations simulations that belong to it
 * @param atBench exercises that are done at the bench with the salt itself
 */
public record SkillView(
        SkillCard skill,
        int stage,
        List<RungLine> rungs,
        String returns,
        String mastery,
        String example,
        List<ExerciseLine> held,
        List<Today.LessonLine> lessons,
        List<ExerciseLine> simulations,
        List<ExerciseLine> atBench,
        boolean shut) {
    public SkillView {
        rungs = List.copyOf(rungs);
        held = List.copyOf(held);
        lessons = List.copyOf(lessons);
        simulations = List.copyOf(simulations);
        atBench = List.copyOf(atBench);
    }

    /** A rung, and whether it is the one that is offered. */
    public record RungLine(String words, String about, boolean offered) {}

    /** An exercise or a simulation by its title. */
    public record ExerciseLine(String id, String title) {}
}
