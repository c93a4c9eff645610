package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.exercise.Answers;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.ReadAnswer;
import org.riseandgel.platform.school.SchoolSettings;

/**
 * Practising: a draw is begun, seen, and its parts are answered in order, each once.
 *
 * <p>Only one's own draws can be seen or answered; any other is as if it were not there. An answer is judged from what
 * was typed and stored together with the standing that follows from it, in one statement that commits by itself.
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
    private final SchoolSettings school;
    private final Clock clock;

    Practice(
            DrawStore store,
            NextDraw nextDraw,
            Drawings drawings,
            DrawViews views,
            Standings standings,
            SchoolSettings school,
            Clock clock) {
        this.store = store;
        this.nextDraw = nextDraw;
        this.drawings = drawings;
        this.views = views;
        this.standings = standings;
        this.school = school;
        this.clock = clock;
    }

    /**
     * Begins a draw or takes up the open one of that skill and level again; nobody draws until the numbers are easy.
     *
     * @param level the wanted level; empty for the one that the standing offers
     * @return the draw; empty when the skill has no exercises
     */
    public Optional<UUID> startDraw(UUID person, String skill, OptionalInt level) {
        int wanted = level.orElseGet(() -> standings.of(person).in(skill).level());
        return nextDraw.of(person, skill, wanted);
    }

    /** The draw as its person may see it now; empty when it is not theirs. */
    public Optional<DrawView> view(UUID person, UUID draw) {
        return store.load(person, draw).flatMap(stored -> drawings.of(stored).map(drawn -> views.view(stored, drawn)));
    }

    /** One answered part with its feedback; empty when the draw is not theirs or the part is not answered. */
    public Optional<Answered> answered(UUID person, UUID draw, int part) {
        return store.load(person, draw).flatMap(stored -> stored.answer(part)
                .flatMap(answer -> drawings.of(stored).map(drawn -> views.answered(drawn, answer))));
    }

    /** What an answer to the open part would be read as; nothing is stored and nothing is said about closeness. */
    public Optional<ReadBack> read(UUID person, UUID draw, int part, String typed) {
        return store.load(person, draw)
                .filter(stored -> !stored.isFinished() && stored.nextPart() == part)
                .flatMap(drawings::of)
                .map(drawn -> readBack(drawn, part, typed));
    }

    /** Opens one more hint; from then on answers of this draw do not count towards the skill. */
    public void showHint(UUID person, UUID draw) {
        store.load(person, draw)
                .flatMap(drawings::of)
                .ifPresent(drawn ->
                        store.showHint(person, draw, drawn.template().hints().size()));
    }

    /**
     * Hands an answer in. Whatever is pressed or sent twice, a part has one stored verdict: the first one.
     *
     * @return what became of it; empty when the draw is not theirs
     */
    public Optional<Handed> answer(UUID person, UUID draw, int part, String typed) {
        for (int i = 0; i < TRIES; i++) {
            Optional<StoredDraw> stored = store.load(person, draw);
            if (stored.isEmpty()) {
                return Optional.empty();
            }
            Optional<Handed> handed = answer(stored.get(), part, typed);
            if (handed.isPresent()) {
                return handed;
            }
        }
        throw new IllegalStateException("the standing moved at each of " + TRIES + " tries to store an answer");
    }

    /** Empty when draw or standing moved on meanwhile: to be loaded and looked at again. */
    private Optional<Handed> answer(StoredDraw draw, int part, String typed) {
        if (draw.answer(part).isPresent()) {
            return Optional.of(new Handed.Stored(part));
        }
        if (draw.isFinished() || draw.nextPart() != part) {
            return Optional.of(new Handed.NotYet());
        }
        DrawnExercise drawn = drawings.of(draw).orElseThrow();
        ReadAnswer read = Answers.read(drawn, part, typed, school.decimalMark());
        if (!read.isClear()) {
            return Optional.of(new Handed.AskAgain(read.question()));
        }
        return store(draw, drawn, part, read) ? Optional.of(new Handed.Stored(part)) : Optional.empty();
    }

    private boolean store(StoredDraw draw, DrawnExercise drawn, int part, ReadAnswer read) {
        StoredAnswer answer = Marking.answer(draw, read, Answers.judge(drawn, part, read, school.decimalMark()), now());
        boolean last = part + 1 == drawn.partCount();
        Mark mark = Marking.mark(draw, answer, last, school.zone());
        return store.store(draw, answer, draw.standing().after(mark), last);
    }

    private ReadBack readBack(DrawnExercise drawn, int part, String typed) {
        DecimalMark mark = school.decimalMark();
        ReadAnswer read = Answers.read(drawn, part, typed, mark);
        return new ReadBack(typed, Answers.echo(drawn, read, mark), read.question());
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
