package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.course.Content;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Skill;
import org.riseandgel.exercise.Answers;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.FeedbackView;
import org.riseandgel.exercise.PublicView;
import org.riseandgel.exercise.Solution;
import org.riseandgel.exercise.Verdict;
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
        Content now = content.current();
        DecimalMark mark = school.decimalMark();
        List<Answered> answered =
                stored.answers().stream().map(answer -> answered(drawn, answer)).toList();
        boolean open = stored.nextPart() < drawn.partCount() && !stored.isFinished();
        int levelNext = stored.standing().ladder().level();
        return new DrawView(
                stored.id(),
                stored.skill(),
                now.course().skill(stored.skill()).map(Skill::title).orElse(stored.skill()),
                drawn.template().title(),
                stored.level(),
                stored.rung(),
                drawn.story(mark),
                drawn.partCount(),
                answered,
                open ? open(stored, drawn, answered, mark) : null,
                NextDraw.nearest(now.exercises().ofSkill(stored.skill()), levelNext)
                        .orElse(levelNext),
                SkillLists.levels(now, stored.skill()),
                item(stored.setting()),
                left(stored),
                null);
    }

    private static DrawView.Item item(StoredDraw.Setting setting) {
        return setting.isMixed() ? new DrawView.Item(setting.number(), setting.items()) : null;
    }

    private static DrawView.Left left(StoredDraw stored) {
        ExerciseStanding with = stored.withExercise();
        boolean toLookAt = with.sureWrong() == SureWrong.LOOK && stored.id().equals(with.sureWrongDraw());
        return new DrawView.Left(stored.exercise(), with.held(), toLookAt ? with.sureWrongPart() : null);
    }

    private static DrawView.Open open(
            StoredDraw stored, DrawnExercise drawn, List<Answered> answered, DecimalMark mark) {
        List<FeedbackView> earlier = answered.stream().map(Answered::feedback).toList();
        // A phone's keypad for decimals has neither letters nor a slash, so it serves only answers without a unit.
        PublicView view = PublicView.of(drawn, stored.nextPart(), mark, earlier, stored.hintsShown());
        return new DrawView.Open(
                view.part(),
                view.prompt(),
                view.tolerance(),
                view.toleranceReason(),
                view.wanted(),
                view.needsUnit() ? "text" : "decimal",
                view.givenSteps(),
                view.hints(),
                view.hintsLeft() > 0,
                view.choice(),
                stored.setting().withPlan() ? Solution.plan(drawn, stored.nextPart()) : List.of(),
                Estimates.isOpen(stored, drawn) ? Estimates.choices(drawn, mark) : List.of(),
                Estimates.made(stored, drawn, mark));
    }

    /** An answered part, explained. What is stored stands, also where today's rules would judge otherwise. */
    Answered answered(DrawnExercise drawn, StoredAnswer stored) {
        DecimalMark mark = school.decimalMark();
        FeedbackView today =
                Answers.judge(drawn, stored.part(), stored.read(), mark).feedback();
        return new Answered(
                stored,
                today.verdict().name().equals(stored.verdict()) ? today : asStored(today, stored),
                Estimates.check(drawn, stored, mark).orElse(null));
    }

    private static FeedbackView asStored(FeedbackView today, StoredAnswer stored) {
        Verdict verdict = Verdict.valueOf(stored.verdict());
        Optional<Slip> slip = Optional.ofNullable(stored.slip()).flatMap(Slip::byId);
        Optional<String> name = slip.map(Slip::title).or(() -> Optional.ofNullable(stored.slip()));
        return new FeedbackView(
                today.part(),
                today.prompt(),
                verdict,
                verdict.title(),
                today.asRead(),
                today.expected(),
                today.tolerance(),
                name,
                slip.map(Slip::line).orElse(""),
                today.working(),
                today.notes());
    }
}
