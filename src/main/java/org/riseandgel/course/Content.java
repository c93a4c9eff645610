package org.riseandgel.course;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.riseandgel.exercise.ExerciseLibrary;

/**
 * The whole content at one moment: the course, its lessons in reading order, the exercises, the checks, the simulations, the words of the
 * trade, and what a search looks through. Never changes.
 */
public record Content(
        Course course,
        Map<LessonKey, Lesson> lessons,
        ExerciseLibrary exercises,
        List<Check> checks,
        List<Simulation> simulations,
        Glossary glossary,
        LessonSearch search) {
    public Content {
        lessons = Collections.unmodifiableMap(new LinkedHashMap<>(lessons));
        checks = List.copyOf(checks);
        simulations = List.copyOf(simulations);
    }

    /** The check of that id. */
    public Optional<Check> check(String id) {
        return checks.stream().filter(check -> check.id().equals(id)).findFirst();
    }

    /** The simulation of that id. */
    public Optional<Simulation> simulation(String id) {
        return simulations.stream()
                .filter(simulation -> simulation.id().equals(id))
                .findFirst();
    }

    /** The simulations of a skill. */
    public List<Simulation> simulationsOf(String skill) {
        return simulations.stream()
                .filter(simulation -> simulation.skill().equals(skill))
                .toList();
    }

    /** The lesson of that name in that stage. */
    public Optional<Lesson> lesson(String stage, String lesson) {
        return Optional.ofNullable(lessons.get(new LessonKey(stage, lesson)));
    }

    /** The lessons of a stage, in reading order. */
    public List<Lesson> lessonsOf(Stage stage) {
        return stage.lessons().stream()
                .map(name -> lessons.get(new LessonKey(stage.id(), name)))
                .filter(lesson -> lesson != null)
                .toList();
    }

    /** The lesson before this one in the course. */
    public Optional<Lesson> before(Lesson lesson) {
        return neighbour(lesson, -1);
    }

    /** The lesson after this one in the course. */
    public Optional<Lesson> after(Lesson lesson) {
        return neighbour(lesson, 1);
    }

    private Optional<Lesson> neighbour(Lesson lesson, int step) {
        List<Lesson> all = List.copyOf(lessons.values());
        int at = all.indexOf(lesson) + step;
        return at < 0 || at >= all.size() ? Optional.empty() : Optional.of(all.get(at));
    }
}
