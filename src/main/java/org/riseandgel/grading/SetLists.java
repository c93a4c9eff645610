package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.account.CohortView;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;

/** The lists of graded sets, cohort by cohort. */
@ApplicationScoped
class SetLists {
    private final GradingAccess access;
    private final SetStore store;
    private final People people;
    private final Clock clock;

    SetLists(GradingAccess access, SetStore store, People people, Clock clock) {
        this.access = access;
        this.store = store;
        this.people = people;
        this.clock = clock;
    }

    /** The sets of a cohort. */
    record Group(CohortView cohort, List<SetLine> sets) {}

    /**
     * One set in the list.
     *
     * @param people who learn in the cohort now or have begun the set
     */
    record SetLine(GradedSet set, String state, long handedIn, int people) {}

    List<Group> groups() {
        List<CohortView> cohorts = access.cohorts();
        List<GradedSet> sets = store
                .ofCohorts(cohorts.stream().map(CohortView::id).toList())
                .stream()
                .filter(set -> !set.isDropped())
                .toList();
        Map<UUID, List<SetStore.Worker>> workers =
                store.workers(sets.stream().map(GradedSet::id).toList());
        Instant now = clock.instant();
        return cohorts.stream()
                .map(cohort -> {
                    List<UUID> learners = people.learnersOf(cohort.id()).stream()
                            .map(PersonView::id)
                            .toList();
                    return new Group(
                            cohort,
                            sets.stream()
                                    .filter(set -> set.cohort().equals(cohort.id()))
                                    .map(set -> line(set, now, learners, workers.getOrDefault(set.id(), List.of())))
                                    .toList());
                })
                .toList();
    }

    private static SetLine line(GradedSet set, Instant now, List<UUID> learners, List<SetStore.Worker> workers) {
        Set<UUID> all = new HashSet<>(learners);
        workers.forEach(worker -> all.add(worker.person()));
        long handedIn = workers.stream().filter(SetStore.Worker::handedIn).count();
        return new SetLine(set, state(set, now), handedIn, all.size());
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
