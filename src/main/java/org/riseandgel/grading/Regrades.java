package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.Judged;
import org.riseandgel.exercise.Verdict;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.school.SchoolSettings;

/** Judging answers again after an exercise was mended: what would change, and the job that changes it. */
@ApplicationScoped
class Regrades {
    private final SetStore sets;
    private final WorkStore works;
    private final RegradeStore store;
    private final FrozenExercises exercises;
    private final PartViews views;
    private final CourseContent content;
    private final People people;
    private final SchoolSettings school;
    private final AuditLog audit;
    private final Clock clock;

    Regrades(
            SetStore sets,
            WorkStore works,
            RegradeStore store,
            FrozenExercises exercises,
            PartViews views,
            CourseContent content,
            People people,
            SchoolSettings school,
            AuditLog audit,
            Clock clock) {
        this.sets = sets;
        this.works = works;
        this.store = store;
        this.exercises = exercises;
        this.views = views;
        this.content = content;
        this.people = people;
        this.school = school;
        this.audit = audit;
        this.clock = clock;
    }

    /** An exercise of a set of which the course has another version by now. */
    record Mended(String exercise, String title, String version, int answers) {}

    /** What would become of one answer. */
    record Change(
            String name,
            int item,
            int part,
            String typed,
            String before,
            int creditBefore,
            String after,
            int creditAfter,
            RegradeStore.Outcome outcome) {
        public boolean isChange() {
            return outcome == RegradeStore.Outcome.CHANGED;
        }

        /** Why it does not change, in words. */
        public String whyNot() {
            return switch (outcome) {
                case CORRECTED_BY_HAND -> "left alone: corrected by hand";
                case OTHER_NUMBERS -> "left alone: the mended exercise would have asked something else";
                default -> "the same";
            };
        }
    }

    /** The exercises of a published set that were mended since. */
    List<Mended> mended(GradedSet set) {
        List<Work> tries = works.ofSet(set.id());
        return sets.pool(set.id()).stream()
                .flatMap(frozen -> content.exercises().find(frozen.exercise()).stream()
                        .filter(now -> !now.version().equals(frozen.version()))
                        .map(now -> new Mended(now.id(), now.title(), now.version(), answers(tries, now.id()))))
                .toList();
    }

    private static int answers(List<Work> tries, String exercise) {
        return tries.stream()
                .flatMap(work -> work.items().stream())
                .filter(item -> item.exercise().exercise().equals(exercise))
                .mapToInt(item -> item.answers().size())
                .sum();
    }

    /** What would become of every answer to an exercise, changing nothing. */
    List<Change> preview(GradedSet set, String exercise) {
        Optional<ExerciseTemplate> now = content.exercises().find(exercise);
        if (now.isEmpty()) {
            return List.of();
        }
        return works.ofSet(set.id()).stream()
                .flatMap(work -> work.items().stream()
                        .filter(item -> item.exercise().exercise().equals(exercise))
                        .flatMap(item -> item.answers().stream().map(answer -> change(work, item, answer, now.get()))))
                .toList();
    }

    private Change change(Work work, Work.Item item, ItemAnswer answer, ExerciseTemplate now) {
        Result result = result(item, answer, now);
        PartTold before = views.told(item, answer.part());
        return new Change(
                people.find(work.person()).map(PersonView::displayName).orElse("Somebody who left"),
                item.number(),
                answer.part() + 1,
                answer.typed(),
                before.mark().words(),
                before.credit(),
                result.judged()
                        .map(judged -> MarkWords.of(
                                        judged.verdict(), judged.slip().orElse(null))
                                .words())
                        .orElse(""),
                result.judged().map(judged -> credit(judged.verdict())).orElse(before.credit()),
                result.outcome());
    }

    private record Result(RegradeStore.Outcome outcome, Optional<Judged> judged) {}

    /** What judging again comes to; marks that a person corrected are left alone. */
    private Result result(Work.Item item, ItemAnswer answer, ExerciseTemplate mended) {
        Optional<MarkChange> last = item.change(answer.part());
        if (last.filter(change -> change.kind() == MarkChange.Kind.CORRECTION).isPresent()) {
            return new Result(RegradeStore.Outcome.CORRECTED_BY_HAND, Optional.empty());
        }
        Optional<Judged> judged = judged(item, answer, mended);
        if (judged.isEmpty()) {
            return new Result(RegradeStore.Outcome.OTHER_NUMBERS, Optional.empty());
        }
        String verdict = last.map(MarkChange::verdict).orElse(answer.verdict().name());
        String expected = last.map(MarkChange::expected).orElse(answer.expected());
        String slip = last.map(MarkChange::verdict).isPresent() ? last.get().slip() : answer.slip();
        boolean same = verdict.equals(judged.get().verdict().name())
                && Objects.equals(slip, judged.get().slip().orElse(null))
                && expected.equals(judged.get().feedback().expected());
        return new Result(same ? RegradeStore.Outcome.SAME : RegradeStore.Outcome.CHANGED, judged);
    }

    private Optional<Judged> judged(Work.Item item, ItemAnswer answer, ExerciseTemplate mended) {
        DecimalMark mark = school.decimalMark();
        try {
            ExerciseTemplate narrowed =
                    Narrowing.parse(item.exercise().ranges()).applied(mended);
            return Rejudged.of(
                    views.drawn(item), content.exercises().drawer().again(narrowed, item.seed()), answer, mark);
        } catch (IllegalArgumentException asksOtherwise) {
            return Optional.empty();
        }
    }

    private static int credit(Verdict verdict) {
        return verdict.isRight() ? MarkChange.ALL : MarkChange.NOTHING;
    }

    /** Begins a job by the version that was looked at; empty when another runs or that version is not the course's now. */
    @Transactional
    Optional<UUID> start(GradedSet set, String exercise, String version, String reason, UUID by) {
        Optional<ExerciseTemplate> mended =
                content.exercises().find(exercise).filter(now -> now.version().equals(version));
        boolean frozenOtherwise = sets.pool(set.id()).stream()
                .anyMatch(
                        one -> one.exercise().equals(exercise) && !one.version().equals(version));
        if (mended.isEmpty() || !frozenOtherwise) {
            return Optional.empty();
        }
        sets.keepText(mended.get(), clock.instant());
        UUID id = UUID.randomUUID();
        RegradeStore.Job job = new RegradeStore.Job(
                id,
                set.id(),
                exercise,
                version,
                RegradeStore.State.RUNNING,
                reason,
                by,
                clock.instant().truncatedTo(ChronoUnit.MICROS),
                null,
                null,
                0,
                0,
                0,
                0,
                0);
        if (!store.add(job)) {
            return Optional.empty();
        }
        audit.note(by, "graded-set-judged-again", set.id().toString(), exercise + "@" + version + ": " + reason);
        return Optional.of(id);
    }

    /** Begins to undo a job; false when it cannot be undone now. */
    @Transactional
    boolean undo(RegradeStore.Job job, UUID by) {
        boolean begun = store.beginUndo(job, by);
        if (begun) {
            audit.note(
                    by,
                    "graded-set-judging-undone",
                    job.set().toString(),
                    job.id().toString());
        }
        return begun;
    }

    /** Does some more of a job, in the caller's transaction; false when nothing was left to take. */
    boolean step(RegradeStore.Job job, int most) {
        boolean undoing = job.state() == RegradeStore.State.UNDOING;
        List<RegradeStore.Target> targets =
                store.take(job.id(), undoing ? RegradeStore.Outcome.CHANGED : RegradeStore.Outcome.WAITING, most);
        for (RegradeStore.Target target : targets) {
            store.settle(job.id(), target, undoing ? undone(job, target) : judgedAgain(job, target));
        }
        if (targets.isEmpty()) {
            store.finish(job.id(), clock.instant().truncatedTo(ChronoUnit.MICROS));
        }
        return !targets.isEmpty();
    }

    private RegradeStore.Outcome judgedAgain(RegradeStore.Job job, RegradeStore.Target target) {
        works.hold(target.work());
        Work work = works.find(target.work()).orElseThrow();
        Work.Item item = work.item(target.number()).orElseThrow();
        ExerciseTemplate mended = exercises.template(new FrozenExercises.Exercise(
                job.exercise(), job.version(), item.exercise().skill(), ""));
        Optional<ItemAnswer> answer = item.answer(target.part());
        Result result = result(item, answer.orElseThrow(), mended);
        if (result.outcome() == RegradeStore.Outcome.CHANGED) {
            Judged judged = result.judged().orElseThrow();
            works.change(new MarkChange(
                    0,
                    work.id(),
                    item.number(),
                    target.part(),
                    MarkChange.Kind.REGRADE,
                    credit(judged.verdict()),
                    judged.verdict().name(),
                    judged.slip().orElse(null),
                    judged.feedback().expected(),
                    job.reason(),
                    job.startedBy(),
                    clock.instant().truncatedTo(ChronoUnit.MICROS),
                    job.id(),
                    null,
                    MarkChange.savesOf(answer)));
        }
        return result.outcome();
    }

    /** Puts back what stood before the job, unless somebody has changed the mark or the answer since. */
    private RegradeStore.Outcome undone(RegradeStore.Job job, RegradeStore.Target target) {
        works.hold(target.work());
        List<MarkChange> history = works.history(target.work(), target.number(), target.part());
        Optional<ItemAnswer> stored = works.find(target.work())
                .flatMap(work -> work.item(target.number()))
                .flatMap(item -> item.answer(target.part()));
        MarkChange newest = history.get(0);
        boolean stands =
                newest.kind() == MarkChange.Kind.REGRADE && job.id().equals(newest.regrade()) && newest.isFor(stored);
        if (!stands) {
            return RegradeStore.Outcome.KEPT;
        }
        ItemAnswer answer = stored.orElseThrow();
        Optional<MarkChange> before =
                history.stream().skip(1).filter(change -> change.isFor(stored)).findFirst();
        works.change(new MarkChange(
                0,
                target.work(),
                target.number(),
                target.part(),
                MarkChange.Kind.UNDO,
                before.map(MarkChange::credit).orElse(credit(answer.verdict())),
                before.map(MarkChange::verdict).orElse(answer.verdict().name()),
                before.isPresent() ? before.get().slip() : answer.slip(),
                before.map(MarkChange::expected).orElse(answer.expected()),
                "Undone: " + job.reason(),
                store.undoneBy(job.id()).orElse(job.startedBy()),
                clock.instant().truncatedTo(ChronoUnit.MICROS),
                job.id(),
                null,
                MarkChange.savesOf(stored)));
        return RegradeStore.Outcome.UNDONE;
    }
}
