package org.riseandgel.course;

import java.util.List;

/** The names of course.yaml that lessons and exercises may refer to. */
record CourseNames(List<String> skills, List<String> objectives) {
    static CourseNames of(Course course) {
        return new CourseNames(
                course.skills().stream().map(Skill::id).toList(),
                course.objectives().stream().map(Objective::id).toList());
    }
}
