package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.riseandgel.course.Content;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.LessonsRead;
import org.riseandgel.course.Skill;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.platform.time.SchoolTime;

/** Gathers what the page of a skill shows. */
@ApplicationScoped
class SkillViews {
    private static final int MASTERY_DAYS = 3;

    private final CourseContent content;
    private final Standings standings;
    private final Practice practice;
    private final StageDoors doors;
    private final LessonsRead lessonsRead;
    private final SchoolTime time;

    SkillViews(
            CourseContent content,
            Standings standings,
            Practice practice,
            StageDoors doors,
            LessonsRead lessonsRead,
            SchoolTime time) {
        this.content = content;
        this.standings = standings;
        this.practice = practice;
        this.doors = doors;
        this.lessonsRead = lessonsRead;
        this.time = time;
    }

    /** The skill as this person sees it; empty when there is no such skill or it has no exercises. */
    Optional<SkillView> of(UUID person, String skill) {
        Content now = content.current();
        return now.course()
                .skill(skill)
                .filter(one -> !now.exercises().ofSkill(skill).isEmpty())
                .map(one -> view(now, one, person));
    }

    private SkillView view(Content now, Skill skill, UUID person) {
        Standings.Begun begun = standings.of(person);
        StandingView standing = begun.in(skill.id());
        Set<String> read = lessonsRead.by(person);
        boolean facts = SkillKinds.isMadeOfFacts(now, skill.id());
        return new SkillView(
                SkillLists.card(now, skill, begun),
                now.course().stage(skill.stage()).orElseThrow().number(),
                facts ? List.of() : rungs(now, skill.id(), standing.rung()),
                returns(standing, begun.today()),
                standing.masteredOn() != null ? "" : mastery(standing),
                facts ? "" : practice.exampleOf(skill.id()).orElse(""),
                held(now, standing),
                now.lessons().values().stream()
                        .filter(lesson -> lesson.practice().contains(skill.id()))
                        .map(lesson -> Today.LessonLine.of(lesson, read))
                        .toList(),
                now.simulationsOf(skill.id()).stream()
                        .map(one -> new SkillView.ExerciseLine(one.id(), one.title()))
                        .toList(),
                now.exercises().atBench(skill.id()).stream()
                        .map(one -> new SkillView.ExerciseLine(one.id(), one.title()))
                        .toList(),
                doors.shutTo(person, skill.id()).isPresent());
    }

    /** The rungs for which there are exercises; the two of level 2 come and go together. */
    private static List<SkillView.RungLine> rungs(Content now, String skill, Rung offered) {
        List<Integer> levels = SkillLists.levels(now, skill);
        return Stream.of(Rung.values())
                .filter(rung -> rung == Rung.EXAMPLE || levels.contains(rung.level()))
                .map(rung -> new SkillView.RungLine(rung.words(), rung.about(), rung == offered))
                .toList();
    }

    private String returns(StandingView standing, LocalDate today) {
        Returns returns = standing.returns();
        if (returns.dueOn() == null) {
            return "";
        }
        return returns.isDue(today)
                ? "Due since " + time.date(returns.dueOn()) + "."
                : "Comes back on " + time.date(returns.dueOn()) + ".";
    }

    private static String mastery(StandingView standing) {
        int days = Math.max(0, MASTERY_DAYS - standing.days());
        String answers = "Mastery is nearly all of your latest answers right without help, on three days or more.";
        return days == 0 || standing.answers() == 0
                ? answers
                : answers + " You have been here on %d of three.".formatted(standing.days());
    }

    private static List<SkillView.ExerciseLine> held(Content now, StandingView standing) {
        return standing.toDo().stream()
                .filter(ToDo::isHeld)
                .flatMap(toDo -> now.exercises().find(toDo.exercise()).stream())
                .map((ExerciseTemplate template) -> new SkillView.ExerciseLine(template.id(), template.title()))
                .toList();
    }
}
