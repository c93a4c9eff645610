package org.riseandgel.course;

import java.util.List;
import java.util.stream.Stream;
import org.riseandgel.exercise.ExerciseTemplate;

/** All exercises by skill, in the order of the course. */
public record ExerciseList(int count, List<OfSkill> skills) {

    /** The exercises of a skill. */
    public record OfSkill(String id, String title, String stage, List<Line> exercises) {}

    /** An exercise in words: what kind it is, and where its facts come from. */
    public record Line(
            String id,
            String title,
            int level,
            String kind,
            boolean critical,
            boolean atBench,
            String source,
            String file) {
        static Line of(ExerciseTemplate template) {
            return new Line(
                    template.id(),
                    template.title(),
                    template.level(),
                    template.kind().title(),
                    template.critical(),
                    template.atBench().isPresent(),
                    template.source(),
                    template.file().path());
        }
    }

    static ExerciseList of(Content content) {
        List<OfSkill> skills = content.course().skills().stream()
                .map(skill -> new OfSkill(
                        skill.id(),
                        skill.title(),
                        content.course().stage(skill.stage()).map(Stage::title).orElse(""),
                        Stream.concat(
                                        content.exercises().ofSkill(skill.id()).stream(),
                                        content.exercises().atBench(skill.id()).stream())
                                .map(Line::of)
                                .toList()))
                .toList();
        return new ExerciseList(content.exercises().all().size(), skills);
    }
}
