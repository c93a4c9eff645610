package org.riseandgel.course;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.exercise.Drawer;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.SolvedView;
import org.riseandgel.exercise.UndrawableException;
import org.riseandgel.platform.school.SchoolSettings;

/** Draws an exercise ten times, so that whoever sets it sees what apprentices would meet. */
@ApplicationScoped
public class ExercisePreviews {
    private static final int DRAWS = 10;
    private static final int LONGEST_NUMBER = 9;

    private final CourseContent content;
    private final SchoolSettings school;

    ExercisePreviews(CourseContent content, SchoolSettings school) {
        this.content = content;
        this.school = school;
    }

    /**
     * Ten draws.
     *
     * @param next the first seed of the next ten
     * @param failed why a seed gave no draw, one line for each that gave none
     */
    public record Preview(
            ExerciseList.Line exercise, String skill, List<SolvedView> draws, int next, List<String> failed) {}

    /** The draws from a seed on; empty when there is no such exercise. */
    Optional<Preview> of(String id, String from) {
        Content now = content.current();
        return now.exercises().find(id).map(template -> preview(now, template, first(from)));
    }

    private Preview preview(Content now, ExerciseTemplate template, int first) {
        Drawer drawer = now.exercises().drawer();
        DecimalMark mark = school.decimalMark();
        List<SolvedView> draws = new ArrayList<>();
        List<String> failed = new ArrayList<>();
        for (int seed = first; seed < first + DRAWS; seed++) {
            try {
                draws.add(SolvedView.of(drawer.draw(template, seed), mark));
            } catch (UndrawableException undrawable) {
                failed.add("Seed %d: %s".formatted(seed, undrawable.getMessage()));
            }
        }
        String skill = now.course().skill(template.skill()).map(Skill::title).orElse(template.skill());
        return new Preview(ExerciseList.Line.of(template), skill, draws, first + DRAWS, failed);
    }

    private static int first(String from) {
        boolean whole = !from.isEmpty()
                && from.length() <= LONGEST_NUMBER
                && from.chars().allMatch(c -> c >= '0' && c <= '9');
        return whole ? Integer.parseInt(from) : 1;
    }
}
