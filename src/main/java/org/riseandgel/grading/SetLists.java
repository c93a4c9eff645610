package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.riseandgel.account.CohortView;

/** The lists of graded sets, cohort by cohort. */
@ApplicationScoped
class SetLists {
    private final GradingAccess access;
    private final SetStore store;
    private final Clock clock;

    SetLists(GradingAccess access, SetStore store, Clock clock) {
        this.access = access;
        this.store = store;
        this.clock = clock;
    }

    /** The sets of a cohort. */
    record Group(CohortView cohort, List<SetLine> sets) {}

    /** One set in the list. */
    record SetLine(GradedSet set, String state, int handedIn) {}

    List<Group> groups() {
        List<CohortView> cohorts = access.cohorts();
        List<GradedSet> sets = store
                .ofCohorts(cohorts.stream().map(CohortView::id).toList())
                .stream()
                .filter(set -> !set.isDropped())
                .toList();
        Map<UUID, Integer> handedIn =
                store.handedIn(sets.stream().map(GradedSet::id).toList());
        Instant now = clock.instant();
        return cohorts.stream()
                .map(cohort -> new Group(
                        cohort,
                        sets.stream()
                                .filter(set -> set.cohort().equals(cohort.id()))
                                .map(set -> new SetLine(set, state(set, now), handedIn.getOrDefault(set.id(), 0)))
                                .toList()))
                .toList();
    }

    /** Where a set is at a moment, in words. */
    static String state(GradedSet set, Instant now) {
        return switch (set.state()) {
            case DRAFT -> "Draft";
            case WITHDRAWN -> "Withdrawn";
            case PUBLISHED -> {
                if (now.isBefore(set.opensAt())) {
                    yield "Published, not open yet";
                }
                yield now.isBefore(set.closesAt()) ? "Open" : "Closed";
            }
        };
    }
}
