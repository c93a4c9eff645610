package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import org.jboss.logging.Logger;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.UndrawableException;
import org.riseandgel.platform.chance.Seeds;

/** Chooses the exercise of a new draw and draws its numbers. */
@ApplicationScoped
class NextDraw {
    private static final Logger LOG = Logger.getLogger(NextDraw.class);

    private final CourseContent content;
    private final Drawings drawings;
    private final DrawStore store;
    private final Seeds seeds;
    private final Clock clock;

    NextDraw(CourseContent content, Drawings drawings, DrawStore store, Seeds seeds, Clock clock) {
        this.content = content;
        this.drawings = drawings;
        this.store = store;
        this.seeds = seeds;
        this.clock = clock;
    }

    /** The open draw of the skill at this level or, without one, a new draw; empty when the skill has no exercise. */
    Optional<UUID> of(UUID person, String skill, int wantedLevel) {
        List<ExerciseTemplate> templates = content.exercises().ofSkill(skill);
        return nearest(templates, wantedLevel).flatMap(level -> {
            return store.open(person, skill, level)
                    .filter(open -> isWorkable(person, open))
                    .or(() -> draw(person, inOrder(templates, level, store.lastExercise(person, skill))));
        });
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
    private boolean isWorkable(UUID person, UUID open) {
        boolean workable = store.load(person, open).flatMap(drawings::of).isPresent();
        if (!workable) {
            store.close(person, open, now());
        }
        return workable;
    }

    /** The exercises of the level by chance, the one that was drawn last at the end. */
    private List<ExerciseTemplate> inOrder(List<ExerciseTemplate> templates, int level, Optional<String> last) {
        SplittableRandom chance = new SplittableRandom(seeds.next());
        List<ExerciseTemplate> left = new ArrayList<>(
                templates.stream().filter(template -> template.level() == level).toList());
        List<ExerciseTemplate> order = new ArrayList<>();
        while (!left.isEmpty()) {
            order.add(left.remove(chance.nextInt(left.size())));
        }
        order.sort(Comparator.comparing(
                template -> last.filter(template.id()::equals).isPresent()));
        return order;
    }

    private Optional<UUID> draw(UUID person, List<ExerciseTemplate> order) {
        for (ExerciseTemplate template : order) {
            Optional<DrawnExercise> drawn = draw(template);
            if (drawn.isPresent()) {
                return drawn.flatMap(draw -> keep(person, draw));
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

    private Optional<UUID> keep(UUID person, DrawnExercise drawn) {
        ExerciseTemplate template = drawn.template();
        StoredDraw draw = StoredDraw.fresh(person, drawn, now());
        return store.add(draw, template.file().text()).or(() -> store.open(person, template.skill(), template.level()));
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
