package org.riseandgel.clearance.pages;

import java.util.List;
import org.riseandgel.clearance.rule.Policy;
import org.riseandgel.platform.web.Choice;

/** What a policy lays down, in words. */
final class PolicyFacts {
    private PolicyFacts() {}

    static List<Choice> of(Policy policy) {
        Policy.Knowledge gate = policy.knowledge();
        Policy.Periods periods = policy.periods();
        return List.of(
                new Choice(
                        "%d sittings at least %d hours apart, at most %d days old; %d of %d right, nothing critical wrong"
                                .formatted(gate.sittings(), gate.hoursApart(), gate.days(), gate.right(), gate.items()),
                        "Knowledge check"),
                months(periods.validityMonths(), "A clearance holds"),
                months(periods.respiratorValidityMonths(), "With a respirator"),
                months(periods.singleInstructorMonths(), "After a single-instructor decision"),
                days(periods.earlyRenewalDays(), "Renewal keeps the anniversary if not earlier than"),
                days(periods.observationDays(), "Practical not older than"),
                days(periods.ppeDays(), "Equipment shown not earlier than"),
                months(periods.trainingMonths(), "Training not older than"),
                months(periods.earlierTrainingMonths(), "Training elsewhere not older than"),
                months(periods.fitTestMonths(), "A fit test holds"),
                months(periods.respiratorTrainingMonths(), "Respirator training holds"),
                months(periods.separationMonths(), "Whoever trained or observed does not decide for"),
                days(periods.deltaDueDays(), "Additional training within"),
                days(periods.idleDays(), "Additional training after no handling for"),
                days(periods.renewalDueDays(), "Renewal after a change of the policy within"),
                new Choice(periods.retentionYears() + " years", "Lines about leavers are kept"));
    }

    private static Choice months(int count, String label) {
        return new Choice(count + " months", label);
    }

    private static Choice days(int count, String label) {
        return new Choice(count + " days", label);
    }
}
