package org.riseandgel.course;

import java.util.List;
import java.util.Optional;

/** The course as a whole: its stages in order, the skills they teach, and what must be known about hazards. */
public record Course(List<Stage> stages, List<Skill> skills, List<Objective> objectives) {
    static final Course EMPTY = new Course(List.of(), List.of(), List.of());

    public Course {
        stages = List.copyOf(stages);
        skills = List.copyOf(skills);
        objectives = List.copyOf(objectives);
    }

    /** The stage of that id. */
    public Optional<Stage> stage(String id) {
        return stages.stream().filter(stage -> stage.id().equals(id)).findFirst();
    }

    /** The skill of that id. */
    public Optional<Skill> skill(String id) {
        return skills.stream().filter(skill -> skill.id().equals(id)).findFirst();
    }
}
