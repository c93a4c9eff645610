package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.account.CohortView;
import org.riseandgel.account.People;
import org.riseandgel.account.Viewer;

/**
 * Which graded sets somebody may see and change: an instructor those of the open cohorts that they teach now, the office
 * all, also those of cohorts that were closed.
 */
@ApplicationScoped
class GradingAccess {
    private final SetStore store;
    private final People people;
    private final Viewer viewer;

    GradingAccess(SetStore store, People people, Viewer viewer) {
        this.store = store;
        this.people = people;
        this.viewer = viewer;
    }

    /** A set with its cohort. */
    record Seen(GradedSet set, CohortView cohort) {}

    /** The cohorts that whoever looks may set work for. */
    List<CohortView> cohorts() {
        return viewer.isOffice() ? people.allCohorts() : people.cohortsTaughtBy(viewer.getId());
    }

    /** The set, if whoever looks may see it. */
    Optional<Seen> set(UUID set) {
        return store.find(set).flatMap(found -> cohort(found.cohort()).map(cohort -> new Seen(found, cohort)));
    }

    /** The cohort, if whoever looks may see what was set for it. */
    Optional<CohortView> cohort(UUID cohort) {
        return viewer.isOffice()
                ? people.cohort(cohort)
                : people.cohortsTaughtBy(viewer.getId()).stream()
                        .filter(one -> one.id().equals(cohort))
                        .findFirst();
    }
}
