package org.riseandgel.clearance.rule;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/** How long a grant holds. Months are those of the calendar: a year after 29 February is 28 February. */
final class Validity {
    private final History history;

    Validity(History history) {
        this.history = history;
    }

    /** What a grant is about to be, as far as its end depends on it. */
    record Terms(Scope scope, boolean singleInstructor, LocalDate exceptionThrough) {}

    /**
     * The last day of a grant made at an instant. Made not too early before the end of the one before it, which must still
     * run, it keeps the anniversary; the caps count from the day of the decision.
     */
    LocalDate through(Policy policy, Terms terms, Optional<Fact<Decision.Granted>> before, Instant at) {
        LocalDate today = history.days().of(at);
        int months = terms.singleInstructor()
                ? policy.periods().singleInstructorMonths()
                : policy.periods().validityMonths();
        if (terms.scope().respirator()) {
            months = Math.min(months, policy.periods().respiratorValidityMonths());
        }
        LocalDate start = before.filter(g -> keepsAnniversary(policy, terms, g, today))
                .map(g -> g.body().validThrough())
                .orElse(today);
        LocalDate end = earlier(start.plusMonths(months), cap(terms, today));
        return terms.exceptionThrough() == null ? end : earlier(end, terms.exceptionThrough());
    }

    /** The last day that a grant can hold whatever it says. */
    LocalDate cappedThrough(Fact<Decision.Granted> grant, Scope scope) {
        Terms terms = new Terms(scope, grant.body().countersigner() != null, null);
        return earlier(grant.body().validThrough(), cap(terms, history.days().of(grant.effective())));
    }

    private static boolean keepsAnniversary(
            Policy policy, Terms terms, Fact<Decision.Granted> before, LocalDate today) {
        LocalDate end = before.body().validThrough();
        return !terms.singleInstructor()
                && before.body().countersigner() == null
                && !before.body().supervised()
                && !today.isAfter(end)
                && !today.isBefore(end.minusDays(policy.periods().earlyRenewalDays()));
    }

    private static LocalDate cap(Terms terms, LocalDate day) {
        int months = terms.scope().respirator() ? Policy.Limit.RESPIRATOR_MONTHS : Policy.Limit.VALIDITY_MONTHS;
        return day.plusMonths(
                terms.singleInstructor() ? Math.min(months, Policy.Limit.SINGLE_INSTRUCTOR_MONTHS) : months);
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }
}
