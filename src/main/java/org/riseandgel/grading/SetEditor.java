package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.riseandgel.account.CohortView;
import org.riseandgel.course.Content;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Skill;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.NumericTemplate;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.web.Choice;

/** Makes what the pages of drafts show. */
@ApplicationScoped
class SetEditor {
    private static final int MOST_TRIES = 9;

    private final CourseContent content;
    private final SchoolSettings school;

    SetEditor(CourseContent content, SchoolSettings school) {
        this.content = content;
        this.school = school;
    }

    /** What there is to pick from. */
    record Choices(
            List<Choice> cohorts,
            List<Choice> tries,
            List<Choice> feedback,
            List<Choice> exercises,
            List<Choice> skills,
            List<Choice> levels) {}

    /**
     * A draft in its form.
     *
     * @param moved whether somebody saved it meanwhile: then this is what was typed, over what is saved now
     * @param differences where the two differ
     * @param out whether it was published or withdrawn meanwhile: then nothing can be saved any more
     * @param remarks on times that come twice
     */
    record Editor(
            GradedSet set,
            SetForm form,
            Choices choices,
            List<LineView> lines,
            boolean moved,
            List<SetForm.Difference> differences,
            boolean out,
            String zone,
            List<String> remarks) {}

    /** A line as it is shown: what it gives, its narrower ranges in words, and what was typed for it. */
    record LineView(
            UUID id, String title, String ranges, boolean narrows, int items, String weight, boolean takenOut) {}

    Editor editor(GradedSet set, SetForm form, List<CohortView> cohorts, boolean moved) {
        boolean out = moved && !set.isDraft();
        List<SetForm.Difference> differences = moved ? form.against(set, cohort -> name(cohort, cohorts)) : List.of();
        form.revision = String.valueOf(set.revision());
        return new Editor(
                set,
                form,
                choices(cohorts),
                set.lines().stream().map(line -> view(line, form)).toList(),
                moved,
                differences,
                out,
                school.zone().getId().replace('_', ' '),
                SchoolMoments.remarks(set.opensLocal(), set.closesLocal(), school.zone()));
    }

    private static String name(String cohort, List<CohortView> cohorts) {
        return cohorts.stream()
                .filter(one -> one.id().toString().equals(cohort))
                .map(CohortView::name)
                .findFirst()
                .orElse(cohort);
    }

    private LineView view(Line line, SetForm form) {
        return new LineView(
                line.id(),
                title(line),
                rangesInWords(line),
                template(line).filter(NumericTemplate.class::isInstance).isPresent(),
                line.items(),
                form.weightOf(line),
                form.takesOut(line.id()));
    }

    private Optional<ExerciseTemplate> template(Line line) {
        return line.isRule() ? Optional.empty() : content.exercises().find(line.exercise());
    }

    /** What a line gives, in words. */
    String title(Line line) {
        Content now = content.current();
        if (!line.isRule()) {
            return now.exercises()
                    .find(line.exercise())
                    .map(one -> one.title() + " (" + skill(now, one.skill()) + ", level " + one.level() + ")")
                    .orElse(line.exercise() + " (not in the course any more)");
        }
        return line.items() + " of " + skill(now, line.skill())
                + (line.level() == 0 ? ", any level" : ", level " + line.level()) + ", drawn for each person";
    }

    private static String rangesInWords(Line line) {
        List<String> words = new ArrayList<>();
        Narrowing.parse(line.ranges())
                .spans()
                .forEach((name, span) -> words.add(name.replace('-', ' ') + " from "
                        + span.from().toPlainString() + " to " + span.to().toPlainString()));
        return String.join(", ", words);
    }

    Choices choices(List<CohortView> cohorts) {
        Content now = content.current();
        List<Choice> exercises = new ArrayList<>(List.of(new Choice("", "None")));
        List<Choice> skills = new ArrayList<>(List.of(new Choice("", "Pick a skill")));
        for (Skill skill : now.course().skills()) {
            List<ExerciseTemplate> ofSkill = now.exercises().ofSkill(skill.id());
            if (!ofSkill.isEmpty()) {
                skills.add(new Choice(skill.id(), skill.title()));
            }
            ofSkill.stream()
                    .sorted(Comparator.comparingInt(ExerciseTemplate::level))
                    .forEach(one -> exercises.add(
                            new Choice(one.id(), skill.title() + ": " + one.title() + " (level " + one.level() + ")")));
        }
        return new Choices(
                cohorts.stream()
                        .map(cohort -> new Choice(cohort.id().toString(), cohort.name()))
                        .toList(),
                IntStream.rangeClosed(1, MOST_TRIES)
                        .mapToObj(tries ->
                                new Choice(String.valueOf(tries), tries == 1 ? "One" : tries + ", the best counts"))
                        .toList(),
                List.of(
                        new Choice(Policy.EACH.name(), Policy.EACH.title()),
                        new Choice(Policy.CLOSING.name(), Policy.CLOSING.title())),
                exercises,
                skills,
                List.of(
                        new Choice("0", "Any level"),
                        new Choice("1", "Level 1"),
                        new Choice("2", "Level 2"),
                        new Choice("3", "Level 3")));
    }

    private static String skill(Content now, String id) {
        return now.course().skill(id).map(Skill::title).orElse(id);
    }
}
