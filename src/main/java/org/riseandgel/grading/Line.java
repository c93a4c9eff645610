package org.riseandgel.grading;

import java.util.UUID;

/**
 * What a set is made of: one exercise, or so many of a skill at a level, drawn anew for each person.
 *
 * @param exercise id of the exercise; null in a rule
 * @param skill the skill of a rule; null when there is an exercise
 * @param level the level of a rule; 0 for all levels
 * @param items how many items it gives
 * @param weight points for each of its items
 * @param ranges narrower ranges of an exercise, see {@link Narrowing}
 */
record Line(UUID id, int place, String exercise, String skill, int level, int items, int weight, String ranges) {
    static final int MOST_ITEMS = 20;
    static final int MOST_POINTS = 100;

    static Line exercise(UUID id, int place, String exercise, int weight, String ranges) {
        return new Line(id, place, exercise, null, 0, 1, weight, ranges);
    }

    static Line rule(UUID id, int place, String skill, int level, int items, int weight) {
        return new Line(id, place, null, skill, level, items, weight, "");
    }

    boolean isRule() {
        return exercise == null;
    }

    /** Whether two rules could draw the same exercise. */
    boolean overlaps(Line other) {
        return isRule()
                && other.isRule()
                && skill.equals(other.skill)
                && (level == 0 || other.level == 0 || level == other.level);
    }

    Line weighing(int points) {
        return new Line(id, place, exercise, skill, level, items, points, ranges);
    }

    Line narrowed(String narrower) {
        return new Line(id, place, exercise, skill, level, items, weight, narrower);
    }

    Line copy(UUID newId) {
        return new Line(newId, place, exercise, skill, level, items, weight, ranges);
    }
}
