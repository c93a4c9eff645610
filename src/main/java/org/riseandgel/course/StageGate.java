package org.riseandgel.course;

import java.util.List;

/**
 * Whether a stage is open to somebody, and what is missing where it is not.
 *
 * @param byHand whether an instructor opened it
 * @param missing what has to be done first, in the order of the course; empty when the stage is open
 */
public record StageGate(String stage, boolean open, boolean byHand, List<Missing> missing) {
    public StageGate {
        missing = List.copyOf(missing);
    }

    /** A stage that is open to everybody. */
    static StageGate open(String stage) {
        return new StageGate(stage, true, false, List.of());
    }

    /**
     * One thing to do first.
     *
     * @param stage number of the stage it belongs to
     * @param lesson whether it is a lesson to read; otherwise it is a skill to master
     * @param address where to do it
     */
    public record Missing(int stage, boolean lesson, String title, String address) {
        public static Missing lesson(Stage stage, Lesson lesson) {
            return new Missing(
                    stage.number(), true, lesson.title(), lesson.key().address());
        }

        public static Missing skill(Stage stage, Skill skill) {
            return new Missing(stage.number(), false, skill.title(), "/practice/skills/" + skill.id());
        }
    }
}
