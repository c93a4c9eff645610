package org.riseandgel.course;

import java.util.List;

/** One stage: its folder name, place in the course, words, lessons in reading order, and the skills of its gate. */
public record Stage(
        String id, int number, String title, String summary, List<String> lessons, List<String> gateSkills) {
    public Stage {
        lessons = List.copyOf(lessons);
        gateSkills = List.copyOf(gateSkills);
    }
}
