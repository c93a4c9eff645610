package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.UUID;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.core.quantity.NumberWriter;
import org.riseandgel.core.quantity.Rational;
import org.riseandgel.core.quantity.Unit;
import org.riseandgel.exercise.Answers;
import org.riseandgel.exercise.CoreVersion;
import org.riseandgel.exercise.DrawnChoice;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.DrawnNumbers;
import org.riseandgel.exercise.DrawnPart;
import org.riseandgel.exercise.Judged;
import org.riseandgel.exercise.ReadAnswer;
import org.riseandgel.exercise.WrongAnswer;
import org.riseandgel.platform.school.SchoolSettings;

/** What invented people hand in: the right answer, or what a mistake leads to, judged as any answer is. */
@ApplicationScoped
class DemoWork {
    private static final long FIRST_SEED = 77_001;
    private static final int SECONDS_PER_PART = 140;
    private static final int FIGURES = 4;
    private static final int HALF = 50;
    private static final Rational FAR_OFF = Rational.of("1.37");

    private final SetStore sets;
    private final WorkStore works;
    private final FrozenExercises exercises;
    private final PartViews views;
    private final SchoolSettings school;

    DemoWork(SetStore sets, WorkStore works, FrozenExercises exercises, PartViews views, SchoolSettings school) {
        this.sets = sets;
        this.works = works;
        this.exercises = exercises;
        this.views = views;
        this.school = school;
    }

    /**
     * One try.
     *
     * @param acts one letter for each part, item after item: r right, s a slip, w wrong; what has no letter is left open
     */
    void of(GradedSet set, UUID person, Instant begun, String acts, boolean handsIn) {
        UUID id = UUID.randomUUID();
        long seed = FIRST_SEED + person.getLeastSignificantBits();
        works.add(id, set.id(), person, 1, seed, begun);
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
            works.addItem(id, number++, chosen, drawn.seed());
        }
        Instant at = begun;
        int act = 0;
        Work work = works.find(id).orElseThrow();
        for (Work.Item item : work.items()) {
            for (int part = 0; part < views.parts(item) && act < acts.length(); part++) {
                Instant next = at.plusSeconds(SECONDS_PER_PART);
                hand(work, item, part, acts.charAt(act++), at, next);
                at = next;
            }
        }
        if (handsIn) {
            works.handIn(work, at);
        }
    }

    private void hand(Work work, Work.Item item, int part, char act, Instant shown, Instant at) {
        DecimalMark mark = school.decimalMark();
        DrawnExercise drawn = views.drawn(item);
        ReadAnswer read = Answers.read(drawn, part, typed(drawn, part, act, mark), mark);
        Judged judged = Answers.judge(drawn, part, read, mark);
        works.store(
                work,
                item.number(),
                new ItemAnswer(
                        part,
                        read.typed(),
                        read.value(),
                        read.unit(),
                        read.figures(),
                        judged.verdict(),
                        judged.slip().orElse(null),
                        judged.feedback().expected(),
                        1,
                        shown,
                        at,
                        CoreVersion.CURRENT),
                false);
    }

    /** Lets half of the first wrong part of somebody's work count. */
    void correct(GradedSet set, UUID person, String reason) {
        works.of(set.id(), person).stream()
                .flatMap(work -> work.items().stream().flatMap(item -> item.answers().stream()
                        .filter(answer -> !answer.isRight())
                        .map(answer -> new MarkChange(
                                0,
                                work.id(),
                                item.number(),
                                answer.part(),
                                MarkChange.Kind.CORRECTION,
                                HALF,
                                answer.verdict().name(),
                                answer.slip(),
                                answer.expected(),
                                reason,
                                DemoPeople.INSTRUCTOR,
                                set.closesAt(),
                                null,
                                null,
                                answer.saves()))))
                .findFirst()
                .ifPresent(works::change);
    }

    private static String typed(DrawnExercise drawn, int part, char act, DecimalMark mark) {
        if (drawn instanceof DrawnChoice choice) {
            return act == 'r' ? choice.right() : choice.wrong();
        }
        DrawnPart asked = ((DrawnNumbers) drawn).part(part);
        Unit unit = asked.part().unit();
        Rational value =
                switch (act) {
                    case 's' -> slip(asked, unit);
                    case 'w' -> asked.expected().times(FAR_OFF);
                    default -> asked.expected();
                };
        String number = NumberWriter.of(mark).figures(value.toDouble(), FIGURES);
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    private static Rational slip(DrawnPart asked, Unit unit) {
        return asked.wrongAnswers().stream()
                .filter(wrong -> wrong.slip() != Slip.ROUNDED_EARLY)
                .map(WrongAnswer::band)
                .findFirst()
                .map(band -> unit.fromBase(band.centre()))
                .orElse(asked.expected().times(FAR_OFF));
    }
}
