package org.riseandgel.course;

import io.quarkus.qute.RawString;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.riseandgel.account.Viewer;
import org.riseandgel.course.CourseView.LessonLine;
import org.riseandgel.course.CourseView.SheetLine;
import org.riseandgel.course.CourseView.SimulationLine;
import org.riseandgel.course.CourseView.SkillLine;
import org.riseandgel.course.CourseView.StageLine;
import org.riseandgel.platform.school.School;
import org.riseandgel.platform.school.SchoolSettings;

/** Puts together what the pages of the course show to the person who looks. */
@ApplicationScoped
public class CourseViews {
    private static final int HEADINGS_WORTH_A_LIST = 4;

    private final CourseContent content;
    private final LessonsRead read;
    private final ReadingPlaces places;
    private final SchoolSettings school;
    private final StageGates gates;
    private final Viewer viewer;

    CourseViews(
            CourseContent content,
            LessonsRead read,
            ReadingPlaces places,
            SchoolSettings school,
            StageGates gates,
            Viewer viewer) {
        this.content = content;
        this.read = read;
        this.places = places;
        this.gates = gates;
        this.school = school;
        this.viewer = viewer;
    }

    /** The whole course. */
    public CourseView course() {
        Content now = content.current();
        Set<String> done = readByViewer();
        Map<String, StageGate> doors = gatesOfViewer();
        List<StageLine> stages = now.course().stages().stream()
                .map(stage -> line(now, stage, done, doors))
                .toList();
        boolean mayMend = viewer.isInstructor() || viewer.isOffice();
        return new CourseView(
                stages,
                viewer.isApprentice(),
                mayMend ? content.problems().size() : 0,
                places.last(viewer.getId()).orElse(null));
    }

    /** One stage, with what it waits for where it is not open yet; empty when there is none of that name. */
    Optional<StageLine> stage(String id) {
        Content now = content.current();
        return now.course().stage(id).map(stage -> line(now, stage, readByViewer(), gatesOfViewer()));
    }

    /** Whether a stage is not open yet to the person who looks. Gates are for those who learn and do not teach. */
    boolean isShut(String stage) {
        return isGated() && !gates.isOpen(viewer.getId(), stage);
    }

    private boolean isGated() {
        return viewer.isApprentice() && !viewer.isInstructor();
    }

    private Map<String, StageGate> gatesOfViewer() {
        return isGated() ? gates.of(viewer.getId()) : Map.of();
    }

    /** One lesson. */
    public LessonView lesson(Content now, Lesson lesson) {
        Set<String> done = readByViewer();
        return new LessonView(
                lesson.title(),
                lesson.key().address(),
                lesson.minutes(),
                now.course().stage(lesson.key().stage()).orElseThrow(),
                lesson.objectives(),
                contents(lesson),
                new RawString(lesson.body().html(school.decimalMark(), emergency())),
                lesson.recall().isEmpty() ? null : questions(lesson, QuestionKind.RECALL),
                questions(lesson, QuestionKind.SELF_CHECK),
                practice(now, lesson),
                sheets(lesson),
                lesson.sources(),
                line(now.before(lesson), done),
                line(now.after(lesson), done),
                done.contains(lesson.key().id()),
                places.in(viewer.getId(), lesson).orElse(null));
    }

    private String emergency() {
        return school.school().map(School::emergency).orElse("");
    }

    private static QuestionSet questions(Lesson lesson, QuestionKind kind) {
        return QuestionSet.blank(lesson.key(), kind.id(), kind.title(), kind.of(lesson));
    }

    private Set<String> readByViewer() {
        return viewer.isApprentice() ? read.by(viewer.getId()) : Set.of();
    }

    private static StageLine line(Content now, Stage stage, Set<String> done, Map<String, StageGate> doors) {
        List<LessonLine> lessons =
                now.lessonsOf(stage).stream().map(lesson -> line(lesson, done)).toList();
        List<SkillLine> skills = now.course().skills().stream()
                .filter(skill -> skill.stage().equals(stage.id()))
                .map(CourseViews::line)
                .toList();
        return new StageLine(
                stage.number(),
                stage.id(),
                stage.title(),
                stage.summary(),
                lessons,
                skills,
                simulations(now, skills),
                doors.getOrDefault(stage.id(), StageGate.open(stage.id())));
    }

    private static List<SimulationLine> simulations(Content now, List<SkillLine> skills) {
        return skills.stream()
                .flatMap(skill -> now.simulationsOf(skill.id()).stream())
                .map(one -> new SimulationLine(one.id(), one.title(), one.minutes()))
                .toList();
    }

    private static LessonLine line(Lesson lesson, Set<String> done) {
        return new LessonLine(
                lesson.title(),
                lesson.key().address(),
                lesson.minutes(),
                done.contains(lesson.key().id()));
    }

    private static LessonLine line(Optional<Lesson> lesson, Set<String> done) {
        return lesson.map(one -> line(one, done)).orElse(null);
    }

    private static SkillLine line(Skill skill) {
        return new SkillLine(skill.id(), skill.title(), skill.about());
    }

    private static List<Heading> contents(Lesson lesson) {
        List<Heading> top = lesson.body().headings().stream()
                .filter(heading -> heading.level() == 2)
                .toList();
        return top.size() < HEADINGS_WORTH_A_LIST ? List.of() : top;
    }

    private static List<SkillLine> practice(Content now, Lesson lesson) {
        return lesson.practice().stream()
                .filter(skill -> !now.exercises().ofSkill(skill).isEmpty())
                .flatMap(skill -> now.course().skill(skill).stream())
                .map(CourseViews::line)
                .toList();
    }

    private static List<SheetLine> sheets(Lesson lesson) {
        return lesson.body().calculations().stream()
                .map(calculation -> new SheetLine(calculation.title(), Addresses.bench(calculation.id())))
                .toList();
    }
}
