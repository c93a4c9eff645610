package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;
import org.jboss.logging.Logger;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.NumericTemplate;
import org.riseandgel.exercise.UndrawableException;
import org.riseandgel.platform.chance.Seeds;
import org.riseandgel.sitting.Sittings;

/**
 * Chooses the exercise of a new draw and draws its numbers.
 *
 * <p>In a skill that is reckoned, what asks for a choice instead of a number is left for later where the working is still
 * led: it has no plan to show. What shows a wrong working comes after at least two other exercises of the skill, so that
 * the first workings that anybody sees are right ones, and who is right with two bare problems at the start has worked
 * both out.
 */
@ApplicationScoped
class NextDraw {
    private static final Logger LOG = Logger.getLogger(NextDraw.class);

    private static final int BEFORE_WRONG_WORKING = 2;

    private final CourseContent content;
    private final Drawings drawings;
    private final DrawStore store;
    private final Sittings sittings;
    private final Seeds seeds;
    private final SchoolDay day;

    NextDraw(CourseContent content, Drawings drawings, DrawStore store, Sittings sittings, Seeds seeds, SchoolDay day) {
        this.content = content;
        this.drawings = drawings;
        this.store = store;
        this.sittings = sittings;
        this.seeds = seeds;
        this.day = day;
    }

    /**
     * What is wanted.
     *
     * @param exercise the exercise it must be; null where any of the skill will do
     * @param session the session it is for; null outside of one
     * @param number its place in the session; null outside of one
     */
    record Wish(String skill, Rung rung, String exercise, UUID session, Integer number) {
        static Wish of(String skill, Rung rung) {
            return new Wish(skill, rung, null, null, null);
        }

        boolean isMixed() {
            return session != null;
        }
    }

    /**
     * The open draw of the skill at this level or, without one, a new draw; the worked example where every exercise that
     * would do is held; the check where an open one asks all of them; empty when the skill has no exercise.
     */
    Optional<Begin> of(UUID person, Wish wish) {
        List<ExerciseTemplate> all = wished(wish);
        Set<String> asked = sittings.askedNow(person);
        List<ExerciseTemplate> templates =
                all.stream().filter(one -> !asked.contains(one.id())).toList();
        Optional<Integer> level = nearest(templates, wish.rung.level());
        if (level.isEmpty()) {
            return all.isEmpty() ? Optional.empty() : Optional.of(new Begin.Check());
        }
        Optional<UUID> open = wish.isMixed()
                ? Optional.empty()
                : store.open(person, wish.skill, level.get()).filter(one -> isWorkable(person, one));
        if (open.isPresent()) {
            boolean waits = store.load(person, open.get()).orElseThrow().askedInCheck();
            return Optional.of(waits ? new Begin.Check() : new Begin.Draw(open.get()));
        }
        return fresh(person, wish, templates, level.get());
    }

    private List<ExerciseTemplate> wished(Wish wish) {
        boolean led = wish.rung.compareTo(Rung.PLAN) <= 0 && !SkillKinds.isMadeOfFacts(content.current(), wish.skill);
        return content.exercises().ofSkill(wish.skill).stream()
                .filter(template -> wish.exercise == null
                        ? !led || fitsWhereItIsLed(template)
                        : wish.exercise.equals(template.id()))
                .toList();
    }

    /** Whether it can be offered below the bare problems: it is reckoned, or it only asks to recall. */
    static boolean fitsWhereItIsLed(ExerciseTemplate template) {
        return template instanceof NumericTemplate || template.level() < Rung.PLAN.level();
    }

    /** The level nearest to the wanted one that has exercises; of two that are as near, the easier. */
    static Optional<Integer> nearest(List<ExerciseTemplate> templates, int wanted) {
        return templates.stream()
                .map(ExerciseTemplate::level)
                .distinct()
                .min(Comparator.<Integer>comparingInt(level -> Math.abs(level - wanted))
                        .thenComparingInt(level -> level));
    }

    /** A draw that can no longer be made is closed, so that it is in nobody's way. */
    boolean isWorkable(UUID person, UUID open) {
        boolean workable = store.load(person, open).flatMap(drawings::of).isPresent();
        if (!workable) {
            store.close(person, open, day.now());
        }
        return workable;
    }

    private Optional<Begin> fresh(UUID person, Wish wish, List<ExerciseTemplate> templates, int level) {
        DrawStore.Known known = store.known(person, wish.skill);
        DrawStore.Latest latest = store.latest(person);
        List<ExerciseTemplate> ofLevel =
                templates.stream().filter(one -> one.level() == level).toList();
        List<ExerciseTemplate> free =
                ofLevel.stream().filter(one -> !known.held().contains(one.id())).toList();
        if (free.isEmpty() && !wish.isMixed()) {
            return Optional.of(new Begin.Example(ofLevel.get(0).id()));
        }
        List<ExerciseTemplate> order = new ArrayList<>(inOrder(free, known));
        if (wish.isMixed()) {
            order.addAll(inOrder(
                    templates.stream()
                            .filter(one -> one.level() != level && !known.held().contains(one.id()))
                            .toList(),
                    known));
        }
        boolean early = known.lastAt().size() < BEFORE_WRONG_WORKING;
        order.sort(Comparator.comparing(template -> early && template.showsWrongWorking()));
        order.sort(Comparator.comparing(
                template -> latest.exercise().filter(template.id()::equals).isPresent()));
        return order.isEmpty() ? Optional.empty() : Optional.of(new Begin.Draw(draw(person, wish, order, latest)));
    }

    /** Exercises that were never answered and then those that were not for the longest time; chance before that. */
    private List<ExerciseTemplate> inOrder(List<ExerciseTemplate> templates, DrawStore.Known known) {
        SplittableRandom chance = new SplittableRandom(seeds.next());
        List<ExerciseTemplate> left = new ArrayList<>(templates);
        List<ExerciseTemplate> order = new ArrayList<>();
        while (!left.isEmpty()) {
            order.add(left.remove(chance.nextInt(left.size())));
        }
        order.sort(Comparator.comparing(
                template -> known.lastAt().get(template.id()), Comparator.nullsFirst(Comparator.naturalOrder())));
        return order;
    }

    private UUID draw(UUID person, Wish wish, List<ExerciseTemplate> order, DrawStore.Latest latest) {
        for (ExerciseTemplate template : order) {
            Optional<DrawnExercise> drawn = draw(template);
            if (drawn.isPresent()) {
                return keep(person, wish, drawn.get(), latest);
            }
        }
        throw new IllegalStateException("no exercise of " + order + " can be drawn");
    }

    private Optional<DrawnExercise> draw(ExerciseTemplate template) {
        try {
            return Optional.of(drawings.fresh(template, seeds.next()));
        } catch (UndrawableException e) {
            LOG.warnf("%s was passed over: %s", template, e.getMessage());
            return Optional.empty();
        }
    }

    private UUID keep(UUID person, Wish wish, DrawnExercise drawn, DrawStore.Latest latest) {
        ExerciseTemplate template = drawn.template();
        Instant now = day.now();
        boolean withPlan = template.level() == Rung.PLAN.level() && wish.rung.compareTo(Rung.PLAN) <= 0;
        StoredDraw.Setting setting = new StoredDraw.Setting(
                withPlan, Estimates.asks(drawn, latest.isEstimateTime()), null, false, wish.session, wish.number, null);
        StoredDraw draw = StoredDraw.fresh(person, drawn, now, setting);
        return store.add(draw, template.file().text())
                .or(() -> wish.isMixed()
                        ? store.ofSession(wish.session, wish.number)
                        : store.open(person, template.skill(), template.level()))
                .orElseThrow();
    }

    /** The open draw of an exercise that is done at the bench or, without one, a new draw; empty when it gives none. */
    Optional<Begin> atBench(UUID person, ExerciseTemplate template) {
        return store.openAtBench(person, template.id())
                .filter(one -> isWorkable(person, one))
                .or(() -> draw(template).map(drawn -> keepAtBench(person, drawn)))
                .map(Begin.Draw::new);
    }

    private UUID keepAtBench(UUID person, DrawnExercise drawn) {
        ExerciseTemplate template = drawn.template();
        StoredDraw.Setting setting =
                new StoredDraw.Setting(false, Estimates.asks(drawn, true), null, false, null, null, null);
        StoredDraw draw = StoredDraw.fresh(person, drawn, day.now(), setting);
        return store.add(draw, template.file().text(), true)
                .or(() -> store.openAtBench(person, template.id()))
                .orElseThrow();
    }
}
