package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import org.riseandgel.clearance.BenchGate;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.Answers;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.ReadAnswer;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.sitting.Sittings;

/**
 * Practising: a draw is begun, seen, and its parts are answered in order, each once.
 *
 * <p>Only one's own draws can be seen or answered; any other is as if it were not there. An answer is judged from what
 * was typed and stored together with the standing that follows from it, in one statement that commits by itself.
 *
 * <p>What an open check of the person asks is neither drawn nor shown nor answered here until the check is handed in.
 */
@ApplicationScoped
public class Practice {
    /** How often an answer is tried again when the same person's standing moves at the same moment elsewhere. */
    private static final int TRIES = 20;

    private final DrawStore store;
    private final NextDraw nextDraw;
    private final Drawings drawings;
    private final DrawViews views;
    private final Standings standings;
    private final Examples examples;
    private final StageDoors doors;
    private final Sittings sittings;
    private final BenchExercises bench;
    private final CourseContent content;
    private final SchoolSettings school;
    private final SchoolDay day;

    Practice(
            DrawStore store,
            NextDraw nextDraw,
            Drawings drawings,
            DrawViews views,
            Standings standings,
            Examples examples,
            StageDoors doors,
            Sittings sittings,
            BenchExercises bench,
            CourseContent content,
            SchoolSettings school,
            SchoolDay day) {
        this.store = store;
        this.nextDraw = nextDraw;
        this.drawings = drawings;
        this.views = views;
        this.standings = standings;
        this.examples = examples;
        this.doors = doors;
        this.sittings = sittings;
        this.bench = bench;
        this.content = content;
        this.school = school;
        this.day = day;
    }

    /**
     * Begins a draw or takes up the open one of that skill and level again; nobody draws until the numbers are easy. At the
     * foot of the ladder the worked example comes first.
     *
     * @param level the wanted level; empty for the rung that the standing offers
     * @return what comes; empty when the skill has no exercises
     */
    public Optional<Begin> startDraw(UUID person, String skill, OptionalInt level) {
        if (content.exercises().ofSkill(skill).isEmpty()) {
            return Optional.empty();
        }
        Optional<Begin> shut = doors.shutTo(person, skill).map(Begin.Shut::new);
        if (shut.isPresent()) {
            return shut;
        }
        if (level.isPresent()) {
            return nextDraw.of(person, NextDraw.Wish.of(skill, Rung.ofDraw(level.getAsInt(), false)));
        }
        StandingView standing = standings.of(person).in(skill);
        return firstExample(person, standing)
                .<Begin>map(Begin.Example::new)
                .or(() -> nextDraw.of(person, NextDraw.Wish.of(skill, standing.rung())));
    }

    /** Begins an exercise that is done at the bench, if the register says so; empty when it is none. */
    public Optional<Begin> startAtBench(UUID person, String exercise) {
        Optional<Begin> shut = shut(person, exercise);
        return bench.template(exercise)
                .flatMap(template -> shut.isPresent()
                        ? shut
                        : bench.ask(person, template)
                                        .filter(told -> !told.isNo())
                                        .isPresent()
                                ? nextDraw.atBench(person, template)
                                : Optional.of(new Begin.NotAllowed(exercise)));
    }

    /** Where somebody is led who may not see the worked example of an exercise now; empty when they may. */
    Optional<Begin> shutExample(UUID person, String exercise) {
        return shut(person, exercise).or(() -> bench.ask(person, exercise)
                .filter(one -> one.told().isNo())
                .map(one -> new Begin.NotAllowed(exercise)));
    }

    /** Where somebody is led who may not see an exercise now; empty when they may, or when there is none. */
    Optional<Begin> shut(UUID person, String exercise) {
        if (sittings.askedNow(person).contains(exercise)) {
            return Optional.of(new Begin.Check());
        }
        return content.exercises()
                .find(exercise)
                .flatMap(one -> doors.shutTo(person, one.skill()))
                .map(Begin.Shut::new);
    }

    /** The worked example to see before the next draw, at the foot of the ladder of a skill that is reckoned. */
    private Optional<String> firstExample(UUID person, StandingView standing) {
        if (standing.rung() != Rung.EXAMPLE || SkillKinds.isMadeOfFacts(content.current(), standing.skill())) {
            return Optional.empty();
        }
        boolean seen = examples.lastSeen(person, standing.skill())
                .filter(at -> standing.lastAt() == null || at.isAfter(standing.lastAt()))
                .isPresent();
        return seen ? Optional.empty() : exampleOf(standing.skill());
    }

    /** The exercise whose worked example stands for the skill: the first of the lowest level. */
    public Optional<String> exampleOf(String skill) {
        return content.exercises().ofSkill(skill).stream()
                .min(Comparator.comparingInt(ExerciseTemplate::level))
                .map(ExerciseTemplate::id);
    }

    /** Notes that a worked example was seen, and begins a draw of its skill. Empty when there is no such exercise. */
    public Optional<Begin> afterExample(UUID person, String exercise) {
        Optional<ExerciseTemplate> template = content.exercises().find(exercise);
        if (template.isEmpty()) {
            return Optional.empty();
        }
        String skill = template.get().skill();
        if (doors.shutTo(person, skill).isEmpty()) {
            examples.seen(person, skill, exercise, day.now());
        }
        return startDraw(person, skill, OptionalInt.empty());
    }

    /** Notes that the explanation of an answer that was sure and wrong was looked at. */
    public void lookedAt(UUID person, UUID draw) {
        examples.lookedAt(person, draw);
    }

    /**
     * Keeps the estimate of the open part, if one is asked; the first one stays.
     *
     * @return whether it was one of the decades to choose from; empty when the draw is not theirs
     */
    public Optional<Boolean> estimate(UUID person, UUID draw, int exponent) {
        Optional<DrawnExercise> drawn = own(person, draw).flatMap(drawings::of);
        boolean offered = drawn.stream()
                .flatMap(one -> Estimates.choices(one, school.decimalMark()).stream())
                .anyMatch(choice -> choice.exponent() == exponent);
        if (offered) {
            store.estimate(person, draw, exponent);
        }
        return drawn.map(one -> offered);
    }

    /** The draw as its person may see it now; empty when it is not theirs. */
    public Optional<DrawView> view(UUID person, UUID draw) {
        return own(person, draw).flatMap(stored -> drawings.of(stored).map(drawn -> views.view(stored, drawn)
                .withBench(bench.ask(person, drawn.template()).orElse(null))));
    }

    /** One answered part with its feedback; empty when the draw is not theirs or the part is not answered. */
    public Optional<Answered> answered(UUID person, UUID draw, int part) {
        return store.load(person, draw).flatMap(stored -> stored.answer(part)
                .flatMap(answer -> drawings.of(stored).map(drawn -> views.answered(drawn, answer))));
    }

    /** What an answer to the open part would be read as; nothing is stored and nothing is said about closeness. */
    public Optional<ReadBack> read(UUID person, UUID draw, int part, String typed) {
        return own(person, draw)
                .filter(stored -> !stored.isFinished() && stored.nextPart() == part)
                .flatMap(drawings::of)
                .map(drawn -> readBack(drawn, part, typed));
    }

    /** Opens one more hint; from then on answers of this draw do not count towards the skill. */
    public void showHint(UUID person, UUID draw) {
        own(person, draw)
                .flatMap(drawings::of)
                .ifPresent(drawn ->
                        store.showHint(person, draw, drawn.template().hints().size()));
    }

    /**
     * Hands an answer in. Whatever is pressed or sent twice, a part has one stored verdict: the first one.
     *
     * @return what became of it; empty when the draw is not theirs
     */
    public Optional<Handed> answer(UUID person, UUID draw, int part, String typed, Optional<Confidence> confidence) {
        for (int i = 0; i < TRIES; i++) {
            Optional<StoredDraw> stored = own(person, draw);
            if (stored.isEmpty()) {
                return Optional.empty();
            }
            Optional<Handed> handed = answer(stored.get(), part, typed, confidence);
            if (handed.isPresent()) {
                return handed;
            }
        }
        throw new IllegalStateException("the standing moved at each of " + TRIES + " tries to store an answer");
    }

    /** Empty when draw or standing moved on meanwhile: to be loaded and looked at again. */
    private Optional<Handed> answer(StoredDraw draw, int part, String typed, Optional<Confidence> confidence) {
        if (draw.answer(part).isPresent()) {
            return Optional.of(new Handed.Stored(part));
        }
        if (draw.isFinished() || draw.nextPart() != part) {
            return Optional.of(new Handed.NotYet());
        }
        DrawnExercise drawn = drawings.of(draw).orElseThrow();
        ReadAnswer read = Answers.read(drawn, part, typed, school.decimalMark());
        List<Problem> problems = new ArrayList<>();
        if (!read.isClear()) {
            problems.add(new Problem("answer", read.question()));
        }
        if (confidence.isEmpty()) {
            problems.add(new Problem(
                    "sure", "Say how sure you are: guess, fairly sure or sure. It never changes the mark."));
        }
        if (!problems.isEmpty()) {
            return Optional.of(new Handed.AskAgain(problems));
        }
        return store(draw, drawn, read, confidence.get()) ? Optional.of(new Handed.Stored(part)) : Optional.empty();
    }

    /**
     * The draw as its person may work on it.
     *
     * @throws WaitsForCheck when an open check of the person asks the same exercise
     * @throws NotAtTheBench when it is done at the bench with the salt, is not finished, and the register says no
     */
    private Optional<StoredDraw> own(UUID person, UUID draw) {
        Optional<StoredDraw> stored = store.load(person, draw);
        if (stored.filter(StoredDraw::askedInCheck).isPresent()) {
            throw new WaitsForCheck();
        }
        stored.filter(one -> !one.isFinished())
                .flatMap(drawings::of)
                .map(DrawnExercise::template)
                .filter(template ->
                        bench.ask(person, template).filter(BenchGate.Told::isNo).isPresent())
                .ifPresent(template -> {
                    throw new NotAtTheBench(template.id());
                });
        return stored;
    }

    private boolean store(StoredDraw draw, DrawnExercise drawn, ReadAnswer read, Confidence confidence) {
        int needed = Returns.needed(SkillKinds.isMadeOfFacts(content.current(), draw.skill()));
        return store.store(Marking.marked(
                draw, drawn, read, new Marking.At(confidence, day.now(), school.decimalMark(), school.zone(), needed)));
    }

    private ReadBack readBack(DrawnExercise drawn, int part, String typed) {
        DecimalMark mark = school.decimalMark();
        ReadAnswer read = Answers.read(drawn, part, typed, mark);
        return new ReadBack(typed, Answers.echo(drawn, read, mark), read.question());
    }
}
