package org.riseandgel.practice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.riseandgel.course.Content;
import org.riseandgel.course.Lesson;
import org.riseandgel.course.Skill;
import org.riseandgel.course.Stage;
import org.riseandgel.course.StageGate;

/**
 * Which stages are open to a person; a pure rule.
 *
 * <p>The first stage is open. Another opens when the stage before it is open, all its lessons were read, and practice
 * mastery was reached in each of its gate skills that has exercises. A stage that an instructor opened by hand is open, and
 * so is one that was begun: what somebody works at is never shut again, whatever is added to earlier stages later.
 */
final class Gates {
    private final Content content;
    private final Progress progress;

    private Gates(Content content, Progress progress) {
        this.content = content;
        this.progress = progress;
    }

    /**
     * What gates look at.
     *
     * @param read ids of the lessons that were read
     * @param begun skills with an answer
     * @param mastered skills in which practice mastery was ever reached
     * @param byHand stages that an instructor opened
     */
    record Progress(Set<String> read, Set<String> begun, Set<String> mastered, Set<String> byHand) {}

    /** The gate of every stage, in the order of the course. */
    static Map<String, StageGate> of(Content content, Progress progress) {
        return new Gates(content, progress).all();
    }

    private Map<String, StageGate> all() {
        Map<String, StageGate> gates = new LinkedHashMap<>();
        Stage before = null;
        boolean open = true;
        List<StageGate.Missing> missing = List.of();
        for (Stage stage : content.course().stages()) {
            if (before != null) {
                missing = open ? missingFrom(before) : missingAfter(before, missing);
            }
            boolean reached = open && missing.isEmpty();
            boolean byHand = progress.byHand.contains(stage.id());
            open = reached || byHand || isBegun(stage);
            gates.put(stage.id(), new StageGate(stage.id(), open, byHand, open ? List.of() : missing));
            before = stage;
        }
        return gates;
    }

    /** What a stage that is itself still shut leaves to do adds to what is missing before it. */
    private List<StageGate.Missing> missingAfter(Stage shut, List<StageGate.Missing> before) {
        List<StageGate.Missing> all = new ArrayList<>(before);
        all.addAll(missingFrom(shut));
        return List.copyOf(all);
    }

    private List<StageGate.Missing> missingFrom(Stage stage) {
        List<StageGate.Missing> missing = new ArrayList<>();
        for (Lesson lesson : content.lessonsOf(stage)) {
            if (!progress.read.contains(lesson.key().id())) {
                missing.add(StageGate.Missing.lesson(stage, lesson));
            }
        }
        for (Skill skill : content.course().skills()) {
            if (stage.gateSkills().contains(skill.id())
                    && !content.exercises().ofSkill(skill.id()).isEmpty()
                    && !progress.mastered.contains(skill.id())) {
                missing.add(StageGate.Missing.skill(stage, skill));
            }
        }
        return missing;
    }

    private boolean isBegun(Stage stage) {
        return content.course().skills().stream()
                .filter(skill -> skill.stage().equals(stage.id()))
                .anyMatch(skill -> progress.begun.contains(skill.id()));
    }
}
