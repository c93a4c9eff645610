package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.riseandgel.course.Content;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.platform.chance.Seeds;

/** Mixed practice: what is due and what was begun on earlier days, a session at a time. */
@ApplicationScoped
public class MixedPractice {
    private static final int TRIES = 3;

    private final Sessions sessions;
    private final Standings standings;
    private final NextDraw nextDraw;
    private final CourseContent content;
    private final Seeds seeds;
    private final SchoolDay day;

    MixedPractice(
            Sessions sessions,
            Standings standings,
            NextDraw nextDraw,
            CourseContent content,
            Seeds seeds,
            SchoolDay day) {
        this.sessions = sessions;
        this.standings = standings;
        this.nextDraw = nextDraw;
        this.content = content;
        this.seeds = seeds;
        this.day = day;
    }

    /**
     * Goes on with today's session or begins one.
     *
     * @param another whether to begin another one when today's is over
     * @return the draw of the item; empty when there is nothing to mix or today's session is over
     */
    public Optional<UUID> next(UUID person, boolean another) {
        for (int i = 0; i < TRIES; i++) {
            Optional<Sessions.Session> latest = sessions.latest(person, day.today());
            if (latest.isPresent() && !latest.get().isOver()) {
                return item(person, latest.get());
            }
            if (latest.isPresent() && !another) {
                return Optional.empty();
            }
            if (!begin(person, latest.map(Sessions.Session::number).orElse(0) + 1)) {
                return Optional.empty();
            }
        }
        throw new IllegalStateException("a session was begun and is not there");
    }

    private boolean begin(UUID person, int number) {
        Standings.Begun begun = standings.of(person);
        long seed = seeds.next();
        List<MixedPlan.Item> items =
                MixedPlan.of(candidates(content.current(), begun), sureAndWrong(content.current(), begun), seed);
        if (!items.isEmpty()) {
            sessions.begin(person, day, number, seed, items);
        }
        return !items.isEmpty();
    }

    /** Skills that can be mixed: begun on an earlier day, and with exercises. */
    static List<MixedPlan.Candidate> candidates(Content now, Standings.Begun begun) {
        LocalDate today = begun.today();
        return begun.standings().values().stream()
                .filter(standing ->
                        standing.firstDay() != null && standing.firstDay().isBefore(today))
                .filter(standing -> !now.exercises().ofSkill(standing.skill()).isEmpty())
                .map(standing -> new MixedPlan.Candidate(
                        standing.skill(),
                        standing.firstDay(),
                        standing.returns().isDue(today) ? standing.returns().daysOverdue(today) : -1,
                        Returns.needed(SkillKinds.isMadeOfFacts(now, standing.skill()))))
                .toList();
    }

    /** Exercises to do again, because somebody was sure and wrong. */
    static List<MixedPlan.Item> sureAndWrong(Content now, Standings.Begun begun) {
        return begun.toDo().stream()
                .filter(toDo -> toDo.isSureWrong() && !toDo.isHeld())
                .filter(toDo -> now.exercises().find(toDo.exercise()).isPresent())
                .map(toDo -> new MixedPlan.Item(toDo.skill(), toDo.exercise()))
                .toList();
    }

    /** The item that comes next; where it cannot be drawn, because all that would do is held, another skill's. */
    private Optional<UUID> item(UUID person, Sessions.Session session) {
        if (session.open() != null && nextDraw.isWorkable(person, session.open())) {
            return Optional.of(session.open());
        }
        Standings.Begun begun = standings.of(person);
        int number = session.drawn() + 1;
        if (number > session.items().size()) {
            return Optional.empty();
        }
        Collection<MixedPlan.Item> wanted = Stream.concat(
                        Stream.of(session.items().get(number - 1)),
                        session.items().stream().map(item -> new MixedPlan.Item(item.skill(), null)))
                .toList();
        return wanted.stream()
                .map(item -> new NextDraw.Wish(
                        item.skill(), begun.in(item.skill()).rung(), item.exercise(), session.id(), number))
                .flatMap(wish -> nextDraw.of(person, wish).stream())
                .filter(Begin.Draw.class::isInstance)
                .map(drawn -> ((Begin.Draw) drawn).id())
                .findFirst();
    }

    /**
     * Mixed practice at this moment.
     *
     * @param waiting how many items a new session would have; 0 when nothing was begun on an earlier day
     * @param today what became of today's latest session; null when there was none
     */
    public record Overview(int waiting, int minutes, Outcome today) {}

    /** A session of today: how many items it has, how many are over, and what became of those. */
    public record Outcome(int items, int done, int right, List<Line> lines) {
        public boolean isOver() {
            return done >= items;
        }

        public int left() {
            return items - done;
        }
    }

    /** An item that is over. */
    public record Line(int number, UUID draw, String title, String skill, boolean right) {}

    /** Mixed practice as this person finds it now. */
    Overview overview(UUID person) {
        Content now = content.current();
        Standings.Begun begun = standings.of(person);
        int waiting = waiting(now, begun);
        return new Overview(
                waiting,
                minutes(waiting),
                sessions.summary(person, day.today())
                        .map(summary -> outcome(now, summary))
                        .orElse(null));
    }

    private static Outcome outcome(Content now, Sessions.Summary summary) {
        return new Outcome(
                summary.items(),
                summary.done(),
                (int) summary.getRight(),
                summary.results().stream().map(result -> line(now, result)).toList());
    }

    private static Line line(Content now, Sessions.Result result) {
        return new Line(
                result.number(),
                result.draw(),
                now.exercises()
                        .find(result.exercise())
                        .map(ExerciseTemplate::title)
                        .orElse(result.exercise()),
                Today.title(now, result.skill()),
                result.right());
    }

    /** How many items a session would have that begins now. */
    static int waiting(Content now, Standings.Begun begun) {
        return MixedPlan.of(candidates(now, begun), sureAndWrong(now, begun), 0).size();
    }

    /** How long so many items take, in minutes: two for each, judgement, no source. */
    static int minutes(int items) {
        return 2 * items;
    }
}
