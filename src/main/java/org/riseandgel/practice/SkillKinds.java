package org.riseandgel.practice;

import java.util.List;
import org.riseandgel.course.Content;
import org.riseandgel.exercise.ChoiceTemplate;
import org.riseandgel.exercise.ExerciseTemplate;

/** What kind of thing a skill is: a way of reckoning, or facts and orders to know. */
final class SkillKinds {
    private SkillKinds() {}

    /** Whether most exercises of the skill ask for no number: each is a fact of its own, and there is nothing to work. */
    static boolean isMadeOfFacts(Content content, String skill) {
        List<ExerciseTemplate> exercises = content.exercises().ofSkill(skill);
        long facts = exercises.stream().filter(ChoiceTemplate.class::isInstance).count();
        return 2 * facts > exercises.size();
    }
}
