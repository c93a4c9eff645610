package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.exercise.Answers;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.FeedbackView;
import org.riseandgel.exercise.NumericTemplate;
import org.riseandgel.exercise.Verdict;
import org.riseandgel.platform.school.SchoolSettings;

/** Explains the parts of items. What is stored stands, also where today's rules would judge otherwise. */
@ApplicationScoped
class PartViews {
    private final FrozenExercises exercises;
    private final SchoolSettings school;

    PartViews(FrozenExercises exercises, SchoolSettings school) {
        this.exercises = exercises;
        this.school = school;
    }

    DrawnExercise drawn(Work.Item item) {
        return exercises.again(item.exercise(), item.seed());
    }

    int parts(Work.Item item) {
        return count(exercises.template(item.exercise()));
    }

    /** How many parts a draw of it has; told without drawing, because results ask it of every item of everybody. */
    static int count(ExerciseTemplate template) {
        return template instanceof NumericTemplate numbers ? numbers.parts().size() : 1;
    }

    Score score(Work work) {
        return Score.of(work.items(), this::parts);
    }

    /** All parts of an item, told. */
    List<PartTold> told(Work.Item item) {
        return IntStream.range(0, parts(item))
                .mapToObj(part -> told(item, part))
                .toList();
    }

    /** One part, told. */
    PartTold told(Work.Item item, int part) {
        DecimalMark mark = school.decimalMark();
        Optional<MarkChange> change = item.change(part);
        DrawnExercise drawn = change.map(MarkChange::mended)
                .map(version -> exercises.again(mended(item, version), item.seed()))
                .orElseGet(() -> drawn(item));
        Optional<ItemAnswer> answer = item.answer(part);
        FeedbackView solved = answer.map(
                        one -> Answers.judge(drawn, part, one.read(), mark).feedback())
                .orElseGet(() -> Solved.of(drawn, part, mark));
        Optional<Verdict> verdict =
                change.map(MarkChange::verdict).map(Verdict::valueOf).or(() -> answer.map(ItemAnswer::verdict));
        String slip = change.map(MarkChange::verdict).isPresent()
                ? change.get().slip()
                : answer.map(ItemAnswer::slip).orElse(null);
        return new PartTold(
                part,
                solved.prompt(),
                verdict.map(one -> MarkWords.of(one, slip)).orElse(MarkWords.OPEN),
                answer.map(ItemAnswer::typed).orElse(""),
                answer.isPresent() ? solved.asRead() : "",
                change.map(MarkChange::expected)
                        .or(() -> answer.map(ItemAnswer::expected))
                        .orElse(solved.expected()),
                solved.tolerance(),
                answer.isPresent() ? solved.line() : "",
                solved.working(),
                answer.isPresent() ? solved.notes() : List.of(),
                item.credit(part),
                change.orElse(null),
                answer.map(ItemAnswer::time).orElse(null));
    }

    static FrozenExercises.Exercise mended(Work.Item item, String version) {
        FrozenExercises.Exercise old = item.exercise();
        return new FrozenExercises.Exercise(old.exercise(), version, old.skill(), old.ranges());
    }

    /** What was read from an answer, in words, without a word on whether it is right. */
    String words(Work.Item item, ItemAnswer answer) {
        return Answers.words(drawn(item), answer.read(), school.decimalMark());
    }
}
