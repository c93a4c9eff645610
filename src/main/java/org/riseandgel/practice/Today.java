package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
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

/** Finds the one thing that an apprentice does next, and gathers what else their first page shows. */
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

    /** What the first page shows. */
    public record Home(
            Next next,
            int stageNumber,
            String stageTitle,
            List<LessonLine> lessons,
            List<SkillCard> skills,
            List<Last> last) {}

    /** A lesson of the stage, and whether it was read. */
    public record LessonLine(String title, String address, int minutes, boolean read) {}

    /** The latest answer in a skill. */
    public record Last(String skill, String title, VerdictWords verdict, Instant at) {}

    /** The kinds of things to do next. */
    public enum Kind {
        GO_ON,
        READ,
        READ_AGAIN,
        PRACTISE,
        KEEP_FRESH,
        NOTHING
    }

    /**
     * What to do next.
     *
     * @param title what it is about
     * @param draw the open draw to go on with, or null
     * @param lesson the lesson to read, or null
     * @param skill the skill to practise, or the one that somebody is stuck in, or null
     */
    public record Next(Kind kind, String title, UUID draw, LessonLine lesson, SkillCard skill) {}

    /** The first page of this person. */
    public Home of(UUID person) {
        Content now = content.current();
        Standings.Begun begun = standings.of(person);
        List<StageSkills> stages = lists.of(begun);
        Optional<StageSkills> current = current(stages);
        Set<String> read = lessonsRead.by(person);
        List<LessonLine> lessons = current.flatMap(stage -> now.course().stage(stage.id()))
                .map(stage -> lessons(now, stage, read))
                .orElse(List.of());
        List<SkillCard> skills = current.map(StageSkills::skills).orElse(List.of());
        return new Home(
                next(now, begun, lessons, skills, read),
                current.map(StageSkills::number).orElse(0),
                current.map(StageSkills::title).orElse(""),
                lessons,
                skills,
                last(now, begun));
    }

    /** The first stage with a skill that is not mastered; when all are, the last. */
    private static Optional<StageSkills> current(List<StageSkills> stages) {
        return stages.stream()
                .filter(stage -> stage.skills().stream().anyMatch(skill -> !isMastered(skill)))
                .findFirst()
                .or(() -> stages.stream().reduce((earlier, later) -> later));
    }

    private static Next next(
            Content now, Standings.Begun begun, List<LessonLine> lessons, List<SkillCard> skills, Set<String> read) {
        Optional<Next> open = begun.open().stream()
                .findFirst()
                .map(draw -> new Next(Kind.GO_ON, title(now, draw.skill()), draw.id(), null, null));
        return open.or(() -> stuck(now, skills, read))
                .or(() -> firstLesson(lessons, skills))
                .or(() -> practise(skills))
                .orElse(new Next(Kind.NOTHING, "", null, null, null));
    }

    /** Whoever is stuck reads the lesson with the worked example before the next try. */
    private static Optional<Next> stuck(Content now, List<SkillCard> skills, Set<String> read) {
        return skills.stream()
                .filter(skill -> skill.standing().state() == SkillState.STUCK)
                .findFirst()
                .flatMap(skill -> now.lessons().values().stream()
                        .filter(lesson -> lesson.skills().contains(skill.id()))
                        .findFirst()
                        .map(lesson -> new Next(Kind.READ_AGAIN, skill.title(), null, line(lesson, read), skill)));
    }

    private static Optional<Next> firstLesson(List<LessonLine> lessons, List<SkillCard> skills) {
        boolean begun = skills.stream().anyMatch(skill -> skill.standing().answers() > 0);
        return begun
                ? Optional.empty()
                : lessons.stream()
                        .filter(lesson -> !lesson.read())
                        .findFirst()
                        .map(lesson -> new Next(Kind.READ, lesson.title(), null, lesson, null));
    }

    /** What was not practised for the longest time, mastered skills last. */
    private static Optional<Next> practise(List<SkillCard> skills) {
        return skills.stream()
                .min(Comparator.comparing(Today::isMastered)
                        .thenComparing(
                                skill -> skill.standing().lastAt(), Comparator.nullsFirst(Comparator.naturalOrder())))
                .map(skill -> new Next(
                        isMastered(skill) ? Kind.KEEP_FRESH : Kind.PRACTISE, skill.title(), null, null, skill));
    }

    private static boolean isMastered(SkillCard skill) {
        return skill.standing().state() == SkillState.MASTERED;
    }

    private static List<LessonLine> lessons(Content now, Stage stage, Set<String> read) {
        return now.lessonsOf(stage).stream().map(lesson -> line(lesson, read)).toList();
    }

    private static LessonLine line(Lesson lesson, Set<String> read) {
        return new LessonLine(
                lesson.title(),
                lesson.key().address(),
                lesson.minutes(),
                read.contains(lesson.key().id()));
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

    private static String title(Content now, String skill) {
        return now.course().skill(skill).map(Skill::title).orElse(skill);
    }
}
