package org.riseandgel.course;

import java.util.List;

/**
 * One lesson, read and checked.
 *
 * @param minutes how long reading takes, as the author says
 * @param recall questions that come before the text, where the lesson is about hazards; otherwise empty
 * @param selfCheck questions that come after the text
 */
public record Lesson(
        LessonKey key,
        String title,
        int minutes,
        List<String> objectives,
        List<String> skills,
        List<String> practice,
        List<String> sources,
        List<Question> recall,
        List<Question> selfCheck,
        LessonBody body) {
    public Lesson {
        objectives = List.copyOf(objectives);
        skills = List.copyOf(skills);
        practice = List.copyOf(practice);
        sources = List.copyOf(sources);
        recall = List.copyOf(recall);
        selfCheck = List.copyOf(selfCheck);
    }
}
