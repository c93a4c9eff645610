package org.riseandgel.course;

import io.quarkus.qute.RawString;
import java.util.List;
import org.riseandgel.course.CourseView.LessonLine;
import org.riseandgel.course.CourseView.SheetLine;
import org.riseandgel.course.CourseView.SkillLine;

/**
 * What the page of a lesson shows. The body is HTML of our own making and goes to the page as it is; everything else is
 * text. Next and previous are null at the ends of the course; recall is null where no questions come before the text;
 * goOn is null where nobody stopped halfway.
 */
public record LessonView(
        String title,
        String address,
        int minutes,
        Stage stage,
        List<String> objectives,
        List<Heading> contents,
        RawString body,
        QuestionSet recall,
        QuestionSet selfCheck,
        List<SkillLine> practice,
        List<SheetLine> sheets,
        List<String> sources,
        LessonLine previous,
        LessonLine next,
        boolean read,
        ReadingPlaces.Place goOn) {}
