package org.riseandgel.practice;

import org.riseandgel.course.Content;

/** What kind of thing a skill is: a way of reckoning, or facts and orders to know. */
final class SkillKinds {
    private SkillKinds() {}

    /** Whether most exercises of the skill ask for no number: each is a fact of its own, and there is nothing to work. */
    static boolean isMadeOfFacts(Content content, String skill) {
        return false;
    }
}
