package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.course.Content;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Lesson;
import org.riseandgel.course.LessonsRead;
import org.riseandgel.course.Skill;
import org.riseandgel.course.Stage;
import org.riseandgel.practice.SkillLists.SkillCard;
import org.riseandgel.practice.SkillLists.StageSkills;

/** Gathers what an apprentice's first page shows. */
@ApplicationScoped
public class Today {
    private static final int LAST_SHOWN = 5;

    private final CourseContent content;
    private final Standings standings;
    private final SkillLists lists;
    private final LessonsRead lessonsRead;

    Today(CourseContent content, Standings standings, SkillLists lists, LessonsRead lessonsRead) {
        this.content = content;
        this.standings = standings;
        this.lists = lists;
        this.lessonsRead = lessonsRead;
    }

    /** What the first page shows: what to do next, and the stage somebody is at. */
    public record Home(
            NextStep next,
            int stageNumber,
            String stageTitle,
            List<LessonLine> lessons,
            List<SkillCard> skills,
            List<Last> last) {}

    /** A lesson, and whether it was read. */
    public record LessonLine(String title, String address, int minutes, boolean read) {
        static LessonLine of(Lesson lesson, Set<String> read) {
            return new LessonLine(
                    lesson.title(),
                    lesson.key().address(),
                    lesson.minutes(),
                    read.contains(lesson.key().id()));
        }
    }

    /** The latest answer in a skill. */
    public record Last(String skill, String title, VerdictWords verdict, Instant at) {}

    /** The first page of this person. */
    public Home of(UUID person) {
        Content now = content.current();
        Standings.Begun begun = standings.of(person);
        List<StageSkills> stages = lists.of(begun);
        Optional<StageSkills> current = current(now, stages);
        Set<String> read = lessonsRead.by(person);
        List<LessonLine> lessons = current.flatMap(stage -> now.course().stage(stage.id()))
                .map(stage -> lessons(now, stage, read))
                .orElse(List.of());
        List<SkillCard> skills = current.map(StageSkills::skills).orElse(List.of());
        return new Home(
                new NextStep.Choice(now, begun, stages, lessons, skills, read).made(),
                current.map(StageSkills::number).orElse(0),
                current.map(StageSkills::title).orElse(""),
                lessons,
                skills,
                last(now, begun));
    }

    /**
     * The stage somebody is at: where they practised last, until all its skills are mastered; then the first with more to
     * learn, one with lessons before one without.
     */
    static Optional<StageSkills> current(Content now, List<StageSkills> stages) {
        List<StageSkills> toLearn = stages.stream()
                .filter(stage -> stage.skills().stream().anyMatch(skill -> !skill.isMastered()))
                .toList();
        return toLearn.stream()
                .filter(stage -> lastAt(stage).isPresent())
                .max(Comparator.comparing(stage -> lastAt(stage).orElseThrow()))
                .or(() ->
                        toLearn.stream().filter(stage -> hasLessons(now, stage)).findFirst())
                .or(() -> toLearn.stream().findFirst())
                .or(() -> stages.stream().reduce((earlier, later) -> later));
    }

    private static boolean hasLessons(Content now, StageSkills stage) {
        return now.course()
                .stage(stage.id())
                .filter(one -> !one.lessons().isEmpty())
                .isPresent();
    }

    private static Optional<Instant> lastAt(StageSkills stage) {
        return stage.skills().stream()
                .map(skill -> skill.standing().lastAt())
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder());
    }

    private static List<LessonLine> lessons(Content now, Stage stage, Set<String> read) {
        return now.lessonsOf(stage).stream()
                .map(lesson -> LessonLine.of(lesson, read))
                .toList();
    }

    private static List<Last> last(Content now, Standings.Begun begun) {
        return begun.standings().values().stream()
                .filter(standing -> standing.lastAt() != null)
                .sorted(Comparator.comparing(StandingView::lastAt).reversed())
                .limit(LAST_SHOWN)
                .map(standing -> new Last(
                        standing.skill(),
                        title(now, standing.skill()),
                        VerdictWords.of(standing.lastVerdict()),
                        standing.lastAt()))
                .toList();
    }

    static String title(Content now, String skill) {
        return now.course().skill(skill).map(Skill::title).orElse(skill);
    }
}
