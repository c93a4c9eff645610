package org.riseandgel.course;

import java.util.List;
import java.util.Optional;

/** The course as a whole: its stages in order and the skills they teach. */
public record Course(List<Stage> stages, List<Skill> skills) {
    public Course {
        stages = List.copyOf(stages);
        skills = List.copyOf(skills);
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
