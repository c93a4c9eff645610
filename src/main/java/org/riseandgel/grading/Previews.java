package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.ChoiceView;
import org.riseandgel.exercise.DrawnChoice;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.FeedbackView;
import org.riseandgel.platform.school.SchoolSettings;

/** Five draws of a set with their answers, as those who set it see them before it goes out. */
@ApplicationScoped
class Previews {
    static final int DRAWS = 5;

    private final SetStore store;
    private final FrozenExercises exercises;
    private final CourseContent content;
    private final SchoolSettings school;

    Previews(SetStore store, FrozenExercises exercises, CourseContent content, SchoolSettings school) {
        this.store = store;
        this.exercises = exercises;
        this.content = content;
        this.school = school;
    }

    /** One person's set, as it might be. */
    record Draw(int number, List<Item> items) {}

    /** An item with all its parts solved. */
    record Item(
            int number,
            String title,
            int level,
            int points,
            String story,
            ChoiceView choice,
            List<FeedbackView> parts) {}

    /** The draws; a line that cannot be drawn as it is gives nothing. The same draft gives the same draws. */
    List<Draw> of(GradedSet set) {
        List<SetStore.Frozen> pool = set.isDraft() ? today(set) : store.pool(set.id());
        long seed = set.id().getLeastSignificantBits();
        return IntStream.rangeClosed(1, DRAWS)
                .mapToObj(number -> new Draw(number, items(set, pool, seed + number)))
                .toList();
    }

    private List<SetStore.Frozen> today(GradedSet set) {
        List<SetStore.Frozen> pool = new ArrayList<>();
        for (Line line : set.lines()) {
            Narrowing ranges = Narrowing.parse(line.ranges());
            Pools.candidates(line, set.lines(), content.exercises()).stream()
                    .filter(one -> PublishCheck.drawProblem(one, ranges, content.exercises())
                            .isEmpty())
                    .forEach(one -> pool.add(new SetStore.Frozen(line.id(), one.id(), one.version(), one.skill())));
        }
        return pool;
    }

    private List<Item> items(GradedSet set, List<SetStore.Frozen> pool, long seed) {
        DecimalMark mark = school.decimalMark();
        List<Item> items = new ArrayList<>();
        for (FormDraw.Chosen chosen : FormDraw.draw(set.lines(), pool, seed)) {
            SetStore.Frozen one = chosen.exercise();
            DrawnExercise drawn = exercises.fresh(
                    new FrozenExercises.Exercise(
                            one.exercise(),
                            one.version(),
                            one.skill(),
                            chosen.line().ranges()),
                    chosen.seed());
            items.add(new Item(
                    items.size() + 1,
                    drawn.template().title(),
                    drawn.template().level(),
                    chosen.line().weight(),
                    drawn.story(mark),
                    drawn instanceof DrawnChoice choice ? choice.view() : null,
                    IntStream.range(0, drawn.partCount())
                            .mapToObj(part -> Solved.of(drawn, part, mark))
                            .toList()));
        }
        return items;
    }
}
