package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberReader;
import org.riseandgel.course.Content;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Skill;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.Feedback;
import org.riseandgel.exercise.FeedbackView;
import org.riseandgel.exercise.Graded;
import org.riseandgel.exercise.Grader;
import org.riseandgel.exercise.PublicView;
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
