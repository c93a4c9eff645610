package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.ExerciseLibrary;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.UndrawableException;
import org.riseandgel.platform.web.Problem;

/** What still keeps a draft from being published. */
@ApplicationScoped
class PublishCheck {
    private final CourseContent content;

    PublishCheck(CourseContent content) {
        this.content = content;
    }

    List<Problem> problems(GradedSet draft, ZoneId zone, Instant now) {
        List<Problem> problems = new ArrayList<>();
        if (draft.lines().isEmpty()) {
            problems.add(new Problem("exercise", "Nothing is in the set yet. Add an exercise or a rule."));
        }
        if (draft.opensLocal() == null) {
            problems.add(new Problem("opens-day", "Say when the set opens."));
        }
        if (draft.closesLocal() == null) {
            problems.add(new Problem("closes-day", "Say when the set closes."));
        } else if (!SchoolMoments.closing(draft.closesLocal(), zone).isAfter(now)) {
            problems.add(new Problem("closes-day", "The set would have closed already. Give a later day or time."));
        }
        skipped("opens-time", draft.opensLocal(), zone).ifPresent(problems::add);
        skipped("closes-time", draft.closesLocal(), zone).ifPresent(problems::add);
        ExerciseLibrary exercises = content.exercises();
        draft.lines().forEach(line -> problem(line, draft.lines(), exercises).ifPresent(problems::add));
        return List.copyOf(problems);
    }

    /** A draft may be older than the school's zone or its rules, so its times are looked at once more. */
    private static Optional<Problem> skipped(String field, LocalDateTime local, ZoneId zone) {
        return Optional.ofNullable(local)
                .flatMap(time -> SchoolMoments.problem(time, zone))
                .map(message -> new Problem(field, message));
    }

    private static Optional<Problem> problem(Line line, List<Line> all, ExerciseLibrary exercises) {
        List<ExerciseTemplate> there = Pools.candidates(line, all, exercises);
        String field = "weight-" + line.id();
        if (there.size() < line.items()) {
            return Optional.of(new Problem(
                    field,
                    line.isRule()
                            ? Pools.tooFew(there.size()) + " Take the rule out and add one for fewer items."
                            : "The exercise “%s” is not in the course any more. Take it out."
                                    .formatted(line.exercise())));
        }
        Optional<ExerciseTemplate> bench =
                there.stream().filter(one -> one.atBench().isPresent()).findFirst();
        if (bench.isPresent()) {
            return Optional.of(new Problem(field, atBench(bench.get())));
        }
        return there.stream()
                .map(template -> undrawable(template, line, exercises))
                .flatMap(Optional::stream)
                .findFirst()
                .map(message -> new Problem(field, message));
    }

    /** Why an exercise at the bench cannot be set: whoever is set it would have to do it, cleared or not. */
    static String atBench(ExerciseTemplate template) {
        return "“%s” is done at the bench with the salt, and the register says who may. Take it out or pick another."
                .formatted(template.title());
    }

    private static Optional<String> undrawable(ExerciseTemplate template, Line line, ExerciseLibrary exercises) {
        return drawProblem(template, Narrowing.parse(line.ranges()), exercises)
                .map(why -> "“%s” cannot be drawn: %s".formatted(template.title(), why));
    }

    /** Why an exercise cannot be drawn with these ranges; empty when it can. */
    static Optional<String> drawProblem(ExerciseTemplate template, Narrowing ranges, ExerciseLibrary exercises) {
        try {
            ExerciseTemplate narrowed = ranges.applied(template);
            for (int seed = 1; seed <= Previews.DRAWS; seed++) {
                exercises.drawer().draw(narrowed, seed);
            }
            return Optional.empty();
        } catch (UndrawableException tooNarrow) {
            return Optional.of(tooNarrow.getMessage() + " Widen the ranges.");
        } catch (IllegalArgumentException nothingLeft) {
            return Optional.of("the exercise was changed and its ranges no longer fit. Set them again.");
        }
    }
}
