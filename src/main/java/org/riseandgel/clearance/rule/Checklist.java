package org.riseandgel.clearance.rule;

import java.util.List;
import java.util.Set;

/**
 * The steps of an observed practical.
 *
 * @param version the first 16 hexadecimal digits of the SHA-256 of its text
 * @param forms the forms of the salt that it is for
 * @param tasks a scope with any of these tasks needs it
 * @param source where it comes from
 */
public record Checklist(
        String id, String title, String version, Set<Form> forms, Set<Task> tasks, String source, List<Step> steps) {
    /**
     * One step.
     *
     * @param critical whether it must be done unprompted
     * @param objectives ids of the learning objectives that it shows
     */
    public record Step(String id, String text, boolean critical, List<String> objectives) {
        public Step {
            objectives = List.copyOf(objectives);
        }
    }

    public Checklist {
        forms = Set.copyOf(forms);
        tasks = Set.copyOf(tasks);
        steps = List.copyOf(steps);
    }

    /** Whether a clearance for this scope needs this practical. */
    public boolean isFor(Scope scope) {
        return forms.contains(scope.form()) && scope.tasks().stream().anyMatch(tasks::contains);
    }

    /** Whether every step was looked at and every critical one was done unprompted. */
    public boolean isPassedBy(List<StepSeen> seen) {
        return seen.size() == steps.size()
                && steps.stream().allMatch(step -> seen.stream()
                        .anyMatch(one -> one.step().equals(step.id())
                                && (!step.critical() || one.outcome() == StepSeen.Outcome.UNPROMPTED)));
    }
}
