package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.clearance.BenchGate;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.BenchWork;
import org.riseandgel.exercise.ExerciseTemplate;

/** The exercises that are done at the bench with the salt itself, and the register's word on who may begin them. */
@ApplicationScoped
public class BenchExercises {
    private final CourseContent content;
    private final BenchGate gate;

    BenchExercises(CourseContent content, BenchGate gate) {
        this.content = content;
        this.gate = gate;
    }

    /** One such exercise and whether this person may begin it now. */
    public record AtBench(String exercise, String title, String skill, BenchGate.Told told) {}

    /** The exercise of that id with the register's answer; empty when there is none that is done at the bench. */
    Optional<AtBench> ask(UUID person, String exercise) {
        return template(exercise)
                .map(one -> new AtBench(
                        one.id(),
                        one.title(),
                        one.skill(),
                        ask(person, one.atBench().orElseThrow())));
    }

    /** The register's answer for a drawn exercise; empty when it is done at a desk. */
    Optional<BenchGate.Told> ask(UUID person, ExerciseTemplate template) {
        return template.atBench().map(work -> ask(person, work));
    }

    /** Who is cleared today for all of what the exercise has somebody do. */
    List<BenchGate.Cleared> whoMay(String exercise) {
        return template(exercise)
                .flatMap(ExerciseTemplate::atBench)
                .map(work -> gate.whoMay(form(work), tasks(work)))
                .orElse(List.of());
    }

    Optional<ExerciseTemplate> template(String exercise) {
        return content.exercises().find(exercise).filter(one -> one.atBench().isPresent());
    }

    private BenchGate.Told ask(UUID person, BenchWork work) {
        return gate.ask(person, form(work), tasks(work));
    }

    private static Form form(BenchWork work) {
        return switch (work.form()) {
            case POWDER -> Form.POWDER;
            case DISPERSION -> Form.DISPERSION;
        };
    }

    private static Set<Task> tasks(BenchWork work) {
        Set<Task> tasks = EnumSet.noneOf(Task.class);
        work.tasks().forEach(task -> tasks.add(Task.valueOf(task.name())));
        return tasks;
    }
}
