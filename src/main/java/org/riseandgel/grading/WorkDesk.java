package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.account.People;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.exercise.Answers;
import org.riseandgel.exercise.CoreVersion;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.Judged;
import org.riseandgel.exercise.ReadAnswer;
import org.riseandgel.platform.chance.Seeds;
import org.riseandgel.platform.school.SchoolSettings;

/**
 * Working a set: a try is begun, its parts are answered, and it is handed in.
 *
 * <p>An answer is judged as it comes and stored with its verdict in one statement, whether or not the verdict may be
 * told yet; so results are complete at every moment and nothing has to happen when a set closes.
 */
@ApplicationScoped
class WorkDesk {
    private final SetStore sets;
    private final WorkStore store;
    private final FrozenExercises exercises;
    private final PartViews views;
    private final People people;
    private final SchoolSettings school;
    private final Seeds seeds;
    private final Clock clock;

    WorkDesk(
            SetStore sets,
            WorkStore store,
            FrozenExercises exercises,
            PartViews views,
            People people,
            SchoolSettings school,
            Seeds seeds,
            Clock clock) {
        this.sets = sets;
        this.store = store;
        this.exercises = exercises;
        this.views = views;
        this.people = people;
        this.school = school;
        this.seeds = seeds;
        this.clock = clock;
    }

    /** What became of an answer. */
    sealed interface Handed {
        /** It is stored, now or, where answers are final, since an earlier press. */
        record Stored() implements Handed {}

        /** It could not be read or lacks its unit; nothing is stored and nothing is used up. */
        record AskAgain(String question) implements Handed {}

        /** Another part comes first; nothing is stored. */
        record NotYet() implements Handed {}

        /** The set closed, was withdrawn, or the try was handed in; nothing is stored. */
        record TooLate() implements Handed {}
    }

    /** Whether the person learns in the set's cohort now. */
    boolean learns(UUID person, GradedSet set) {
        return people.cohortsLearnedIn(person).stream()
                .anyMatch(cohort -> cohort.id().equals(set.cohort()));
    }

    TryRule.Answer mayWork(UUID person, GradedSet set, List<Work> tries) {
        List<SetStore.Extension> extensions = sets.extensions(set.id());
        return TryRule.answer(
                set,
                TryRule.closes(set, extensions, person),
                TryRule.tries(set, extensions, person),
                tries,
                learns(person, set),
                now());
    }

    /** Begins a try or takes up the open one, however often it is pressed; empty when none may be begun now. */
    @Transactional
    Optional<UUID> begin(UUID person, GradedSet set) {
        TryRule.Answer may = mayWork(person, set, store.of(set.id(), person));
        if (may instanceof TryRule.Answer.GoOn open) {
            return Optional.of(open.work());
        }
        return may instanceof TryRule.Answer.Begin begin ? fresh(person, set, begin.nth()) : Optional.empty();
    }

    private Optional<UUID> fresh(UUID person, GradedSet set, int nth) {
        UUID work = UUID.randomUUID();
        long seed = seeds.next();
        if (!store.add(work, set.id(), person, nth, seed, now())) {
            // Another press was quicker. Its try is the one to go on with.
            return store.of(set.id(), person).stream()
                    .filter(Work::isOpen)
                    .map(Work::id)
                    .findFirst();
        }
        int number = 1;
        for (FormDraw.Chosen chosen : FormDraw.draw(set.lines(), sets.pool(set.id()), seed)) {
            SetStore.Frozen one = chosen.exercise();
            DrawnExercise drawn = exercises.fresh(
                    new FrozenExercises.Exercise(
                            one.exercise(),
                            one.version(),
                            one.skill(),
                            chosen.line().ranges()),
                    chosen.seed());
            store.addItem(work, number++, chosen, drawn.seed());
        }
        return Optional.of(work);
    }

    /** What an answer to a part would be read as; nothing is stored and nothing is said about closeness. */
    ReadBack read(Work.Item item, int part, String typed) {
        DrawnExercise drawn = views.drawn(item);
        DecimalMark mark = school.decimalMark();
        ReadAnswer read = Answers.read(drawn, part, typed, mark);
        return new ReadBack(typed, Answers.echo(drawn, read, mark), read.question());
    }

    /** What a typed answer is read as; the echo is empty for a choice and when there is a question. */
    record ReadBack(String typed, String echo, String question) {
        public boolean isToBeSeen() {
            return !echo.isEmpty();
        }

        public boolean isClear() {
            return question.isEmpty();
        }
    }

    /** Hands in the answer to a part. Parts come in order; an earlier answer is replaced where nothing is told yet. */
    Handed answer(Work work, GradedSet set, Work.Item item, int part, String typed) {
        boolean mayReplace = set.feedback() == Policy.CLOSING;
        if (item.answer(part).isPresent() && !mayReplace) {
            return new Handed.Stored();
        }
        if (part < 0 || part > item.answers().size() || part >= views.parts(item)) {
            return new Handed.NotYet();
        }
        DecimalMark mark = school.decimalMark();
        DrawnExercise drawn = views.drawn(item);
        ReadAnswer read = Answers.read(drawn, part, typed, mark);
        if (!read.isClear()) {
            return new Handed.AskAgain(read.question());
        }
        ItemAnswer answer = judged(work, part, read, Answers.judge(drawn, part, read, mark));
        if (store.store(work, item.number(), answer, mayReplace)) {
            return new Handed.Stored();
        }
        boolean before = store.find(work.id())
                .flatMap(now -> now.item(item.number()))
                .flatMap(now -> now.answer(part))
                .isPresent();
        return before && !mayReplace ? new Handed.Stored() : new Handed.TooLate();
    }

    private ItemAnswer judged(Work work, int part, ReadAnswer read, Judged judged) {
        Instant now = now();
        Instant before = work.lastActAt();
        return new ItemAnswer(
                part,
                read.typed(),
                read.value(),
                read.unit(),
                read.figures(),
                judged.verdict(),
                judged.slip().orElse(null),
                judged.feedback().expected(),
                1,
                // A clock that was put back must not make an answer come before its question.
                before.isAfter(now) ? now : before,
                now,
                CoreVersion.CURRENT);
    }

    /** Hands a try in; false when that is too late or was done before. */
    boolean handIn(Work work) {
        Instant now = now();
        return store.handIn(work, now.isBefore(work.begunAt()) ? work.begunAt() : now);
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
