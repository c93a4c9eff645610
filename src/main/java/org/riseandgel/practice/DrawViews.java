package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.platform.school.SchoolSettings;

/** Makes what a page may show of a draw; the right answers stay behind. */
@ApplicationScoped
class DrawViews {
    private final CourseContent content;
    private final SchoolSettings school;

    DrawViews(CourseContent content, SchoolSettings school) {
        this.content = content;
        this.school = school;
    }

    DrawView view(StoredDraw stored, DrawnExercise drawn) {
        throw new UnsupportedOperationException();
    }

    /** An answered part, explained. What is stored stands, also where today's rules would judge otherwise. */
    Answered answered(DrawnExercise drawn, StoredAnswer stored) {
        throw new UnsupportedOperationException();
    }
}
