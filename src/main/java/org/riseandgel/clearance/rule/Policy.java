package org.riseandgel.clearance.rule;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The school's own periods and gates. No policy is weaker than {@link Limit}.
 *
 * @param version SHA-256 of the policy's text, in hexadecimal
 * @param singleInstructor whether one instructor may train, observe and decide, with an outside countersigner
 */
public record Policy(
        String version,
        Knowledge knowledge,
        Periods periods,
        boolean singleInstructor,
        List<Ppe> ppe,
        List<RespiratorNeed> respirator,
        List<Checklist> checklists) {
    /** What no school may go beyond. */
    public static final class Limit {
        public static final int VALIDITY_MONTHS = 36;
        public static final int RESPIRATOR_MONTHS = 12;
        public static final int SINGLE_INSTRUCTOR_MONTHS = 6;
        public static final int EARLY_RENEWAL_DAYS = 60;
        public static final int EVIDENCE_DAYS = 60;
        public static final int SEPARATION_MONTHS = 24;

        private Limit() {}
    }

    /**
     * The knowledge gate.
     *
     * @param check the id of the check
     * @param sittings how many passed sittings are needed
     * @param items how many items a sitting has
     * @param right how many of them must be right; none of the critical ones may be wrong
     * @param hoursApart from handing one in to starting the next
     * @param days how old a sitting may be
     */
    public record Knowledge(String check, int sittings, int items, int right, int hoursApart, int days) {}

    /** Periods, each in the unit of its name. */
    public record Periods(
            int validityMonths,
            int respiratorValidityMonths,
            int singleInstructorMonths,
            int earlyRenewalDays,
            int observationDays,
            int ppeDays,
            int trainingMonths,
            int earlierTrainingMonths,
            int fitTestMonths,
            int respiratorTrainingMonths,
            int separationMonths,
            int deltaDueDays,
            int idleDays,
            int renewalDueDays,
            int retentionYears) {}

    /** Protective equipment that has to be shown for a form of the salt. */
    public record Ppe(Form form, Set<String> items) {
        public Ppe {
            items = Set.copyOf(items);
        }
    }

    /** Tasks with a form of the salt that need a respirator. */
    public record RespiratorNeed(Form form, Set<Task> tasks) {
        public RespiratorNeed {
            tasks = Set.copyOf(tasks);
        }
    }

    public Policy {
        ppe = List.copyOf(ppe);
        respirator = List.copyOf(respirator);
        checklists = List.copyOf(checklists);
    }

    /** The practicals that a scope needs. */
    public List<Checklist> checklistsFor(Scope scope) {
        return checklists.stream().filter(one -> one.isFor(scope)).toList();
    }

    /** The practical with this id. */
    public Optional<Checklist> checklist(String id) {
        return checklists.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    /** The equipment to be shown for a form; none known means that nothing is enough. */
    public Optional<Set<String>> ppeFor(Form form) {
        return ppe.stream().filter(one -> one.form() == form).map(Ppe::items).findFirst();
    }

    /** Whether work with these tasks needs a respirator. */
    public boolean needsRespirator(Form form, Set<Task> tasks) {
        return respirator.stream()
                .anyMatch(need -> need.form() == form && need.tasks().stream().anyMatch(tasks::contains));
    }
}
