package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
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
import org.riseandgel.course.StageGate;
import org.riseandgel.practice.SkillLists.SkillCard;
import org.riseandgel.practice.SkillLists.StageSkills;
import org.riseandgel.sitting.WaitingChecks;

/** Gathers what an apprentice's first page shows. */
@ApplicationScoped
public class Today {
    private static final int LAST_SHOWN = 5;

    private final CourseContent content;
    private final Standings standings;
    private final SkillLists lists;
    private final LessonsRead lessonsRead;
    private final WaitingChecks checks;

    Today(CourseContent content, Standings standings, SkillLists lists, LessonsRead lessonsRead, WaitingChecks checks) {
        this.content = content;
        this.standings = standings;
        this.lists = lists;
        this.lessonsRead = lessonsRead;
        this.checks = checks;
    }

    /**
     * What the first page shows: what to do next, which checks wait, what is due, and the stage somebody is at.
     *
     * @param mixed the session of mixed practice that brings up what is due; null where none is left today
     * @param readingLeft how many minutes the unread lessons of the stage take
     * @param gate what the stage after the current one still waits for; null where it is open or there is none
     */
    public record Home(
            NextStep next,
            List<WaitingChecks.Waiting> checks,
            List<Due> due,
            Mixed mixed,
            int stageNumber,
            String stageTitle,
            List<LessonLine> lessons,
            int readingLeft,
            List<SkillCard> skills,
            NextGate gate,
            List<Last> last) {}

    /** How many items of mixed practice wait, and how long they take. */
    public record Mixed(int items, int minutes) {
        static Mixed of(int items) {
            return items == 0 ? null : new Mixed(items, MixedPractice.minutes(items));
        }
    }

    /** A skill that comes back today. */
    public record Due(String skill, String title, long daysOverdue) {
        /** Since when, in words. */
        public String since() {
            if (daysOverdue == 0) {
                return "since today";
            }
            return daysOverdue == 1 ? "since yesterday" : "for " + daysOverdue + " days";
        }
    }

    /** A stage that is not open yet, and what it waits for. */
    public record NextGate(int number, String title, List<StageGate.Missing> missing) {}

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
        Set<String> read = lessonsRead.by(person);
        Map<String, StageGate> gates = StageDoors.gates(now, begun, read);
        List<StageSkills> stages = lists.of(begun, Set.of()).stream()
                .filter(stage -> gates.get(stage.id()).open())
                .toList();
        Optional<Stage> current = current(now, begun, read, gates);
        List<LessonLine> lessons =
                current.map(stage -> lessons(now, stage, read)).orElse(List.of());
        List<SkillCard> skills = current.flatMap(stage -> stages.stream()
                        .filter(one -> one.id().equals(stage.id()))
                        .findFirst())
                .map(StageSkills::skills)
                .orElse(List.of());
        List<WaitingChecks.Waiting> waiting = checks.of(person);
        return new Home(
                new NextStep.Choice(now, waiting, begun, lessons, skills, read).made(),
                waiting,
                due(now, begun),
                Mixed.of(begun.isSessionOpen() ? begun.session().left() : MixedPractice.waiting(now, begun)),
                current.map(Stage::number).orElse(0),
                current.map(Stage::title).orElse(""),
                lessons,
                lessons.stream()
                        .filter(lesson -> !lesson.read())
                        .mapToInt(LessonLine::minutes)
                        .sum(),
                skills,
                current.flatMap(stage -> after(now, stage, gates)).orElse(null),
                last(now, begun));
    }

    /**
     * The stage somebody is at: of the open ones with something left to learn the one where they practised last; then the
     * first of them, one with lessons before one without; then the last open one.
     */
    static Optional<Stage> current(Content now, Standings.Begun begun, Set<String> read, Map<String, StageGate> gates) {
        List<Stage> open = now.course().stages().stream()
                .filter(stage -> gates.get(stage.id()).open())
                .filter(stage ->
                        !stage.lessons().isEmpty() || !practised(now, stage).isEmpty())
                .toList();
        List<Stage> toLearn =
                open.stream().filter(stage -> hasLeft(now, stage, begun, read)).toList();
        return toLearn.stream()
                .filter(stage -> lastAt(now, stage, begun).isPresent())
                .max(Comparator.comparing(stage -> lastAt(now, stage, begun).orElseThrow()))
                .or(() -> toLearn.stream()
                        .filter(stage -> !stage.lessons().isEmpty())
                        .findFirst())
                .or(() -> toLearn.stream().findFirst())
                .or(() -> open.stream().reduce((earlier, later) -> later));
    }

    private static boolean hasLeft(Content now, Stage stage, Standings.Begun begun, Set<String> read) {
        return now.lessonsOf(stage).stream()
                        .anyMatch(lesson -> !read.contains(lesson.key().id()))
                || practised(now, stage).stream()
                        .anyMatch(skill -> begun.in(skill.id()).masteredOn() == null);
    }

    /** The skills of a stage that have exercises. */
    private static List<Skill> practised(Content now, Stage stage) {
        return now.course().skills().stream()
                .filter(skill -> skill.stage().equals(stage.id()))
                .filter(skill -> !now.exercises().ofSkill(skill.id()).isEmpty())
                .toList();
    }

    private static Optional<Instant> lastAt(Content now, Stage stage, Standings.Begun begun) {
        return practised(now, stage).stream()
                .map(skill -> begun.in(skill.id()).lastAt())
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder());
    }

    private static Optional<NextGate> after(Content now, Stage current, Map<String, StageGate> gates) {
        return now.course().stages().stream()
                .filter(stage -> stage.number() > current.number())
                .filter(stage -> !gates.get(stage.id()).open())
                .findFirst()
                .map(stage -> new NextGate(
                        stage.number(), stage.title(), gates.get(stage.id()).missing()));
    }

    private static List<LessonLine> lessons(Content now, Stage stage, Set<String> read) {
        return now.lessonsOf(stage).stream()
                .map(lesson -> LessonLine.of(lesson, read))
                .toList();
    }

    private static List<Due> due(Content now, Standings.Begun begun) {
        LocalDate today = begun.today();
        return begun.standings().values().stream()
                .filter(standing -> standing.returns().isDue(today))
                .filter(standing -> !now.exercises().ofSkill(standing.skill()).isEmpty())
                .map(standing -> new Due(
                        standing.skill(),
                        title(now, standing.skill()),
                        standing.returns().daysOverdue(today)))
                .sorted(Comparator.comparingLong(Due::daysOverdue).reversed())
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
