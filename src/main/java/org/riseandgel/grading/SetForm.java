package org.riseandgel.grading;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.jboss.resteasy.reactive.RestForm;

/** A draft as it is typed: the head of the set, the points of its lines, what to take out and what to add. */
public class SetForm {
    @RestForm
    public String revision;

    @RestForm
    public String title;

    @RestForm
    public String note;

    @RestForm
    public String cohort;

    @RestForm("opens-day")
    public String opensDay;

    @RestForm("opens-time")
    public String opensTime;

    @RestForm("closes-day")
    public String closesDay;

    @RestForm("closes-time")
    public String closesTime;

    @RestForm
    public String tries;

    @RestForm
    public String feedback;

    /** The lines that were on the page, each with the points at the same place of the other list. */
    @RestForm("line")
    public List<String> lines;

    @RestForm("weight")
    public List<String> weights;

    @RestForm("remove")
    public List<String> removed;

    /** An exercise to add; empty for none. */
    @RestForm
    public String exercise;

    /** A rule to add: so many of a skill; empty for none. */
    @RestForm("rule-items")
    public String ruleItems;

    @RestForm("rule-skill")
    public String ruleSkill;

    @RestForm("rule-level")
    public String ruleLevel;

    static SetForm empty() {
        return new SetForm().whole();
    }

    /** The form with nothing missing: a field that was not sent is an empty one. */
    SetForm whole() {
        revision = Objects.requireNonNullElse(revision, "0");
        title = Objects.requireNonNullElse(title, "");
        note = Objects.requireNonNullElse(note, "");
        cohort = Objects.requireNonNullElse(cohort, "");
        opensDay = Objects.requireNonNullElse(opensDay, "");
        opensTime = Objects.requireNonNullElse(opensTime, "");
        closesDay = Objects.requireNonNullElse(closesDay, "");
        closesTime = Objects.requireNonNullElse(closesTime, "");
        tries = Objects.requireNonNullElse(tries, "1");
        feedback = Objects.requireNonNullElse(feedback, Policy.EACH.name());
        lines = Objects.requireNonNullElse(lines, List.of());
        weights = Objects.requireNonNullElse(weights, List.of());
        removed = Objects.requireNonNullElse(removed, List.of());
        exercise = Objects.requireNonNullElse(exercise, "");
        ruleItems = Objects.requireNonNullElse(ruleItems, "");
        ruleSkill = Objects.requireNonNullElse(ruleSkill, "");
        ruleLevel = Objects.requireNonNullElse(ruleLevel, "0");
        return this;
    }

    /** What a stored draft looks like in the form. */
    static SetForm of(GradedSet set) {
        SetForm form = empty();
        form.revision = String.valueOf(set.revision());
        form.title = set.title();
        form.note = set.note();
        form.cohort = set.cohort().toString();
        form.opensDay = day(set.opensLocal());
        form.opensTime = time(set.opensLocal());
        form.closesDay = day(set.closesLocal());
        form.closesTime = time(set.closesLocal());
        form.tries = String.valueOf(set.tries());
        form.feedback = set.feedback().name();
        form.lines = set.lines().stream().map(line -> line.id().toString()).toList();
        form.weights =
                set.lines().stream().map(line -> String.valueOf(line.weight())).toList();
        return form;
    }

    /** The points typed for a line; what is stored where the line was not on the page. */
    String weightOf(Line line) {
        int at = lines.indexOf(line.id().toString());
        return at >= 0 && at < weights.size() ? weights.get(at) : String.valueOf(line.weight());
    }

    boolean takesOut(UUID line) {
        return removed.contains(line.toString());
    }

    /** Whether everything that was typed is in the draft that is saved now. */
    boolean isSavedIn(GradedSet now) {
        List<Line> its = now.lines();
        boolean added = exercise.isEmpty() || its.stream().anyMatch(line -> exercise.equals(line.exercise()));
        boolean ruled = ruleItems.isBlank()
                || its.stream()
                        .anyMatch(line -> ruleSkill.equals(line.skill())
                                && ruleLevel.equals(String.valueOf(line.level()))
                                && ruleItems.strip().equals(String.valueOf(line.items())));
        return added
                && ruled
                && its.stream().noneMatch(line -> takesOut(line.id()))
                && its.stream().allMatch(line -> weightOf(line).strip().equals(String.valueOf(line.weight())))
                && against(now, cohortId -> cohortId).isEmpty();
    }

    int seenRevision() {
        return revision.matches("[0-9]{1,9}") ? Integer.parseInt(revision) : 0;
    }

    /** A field that two people typed differently. */
    record Difference(String what, String yours, String saved) {}

    /** Where this form differs from what is saved now. */
    List<Difference> against(GradedSet saved, UnaryOperator<String> cohortName) {
        SetForm now = of(saved);
        List<Difference> found = new ArrayList<>();
        differ(found, "Title", title, now.title);
        differ(found, "Note", note, now.note);
        differ(found, "Cohort", cohortName.apply(cohort), cohortName.apply(now.cohort));
        differ(found, "Opens", opensDay + " " + opensTime, now.opensDay + " " + now.opensTime);
        differ(found, "Closes", closesDay + " " + closesTime, now.closesDay + " " + now.closesTime);
        differ(found, "Tries", tries, now.tries);
        differ(found, "Feedback", feedback, now.feedback);
        return found;
    }

    private static void differ(List<Difference> found, String what, String yours, String saved) {
        if (!yours.strip().equals(saved.strip())) {
            found.add(new Difference(what, yours.strip(), saved.strip()));
        }
    }

    private static String day(LocalDateTime moment) {
        return moment == null ? "" : moment.toLocalDate().toString();
    }

    private static String time(LocalDateTime moment) {
        return moment == null ? "" : SchoolMoments.shown(moment.toLocalTime());
    }
}
