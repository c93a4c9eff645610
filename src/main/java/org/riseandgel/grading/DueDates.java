package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.riseandgel.account.feed.CalendarSource;
import org.riseandgel.platform.calendar.CalendarEvent;

/** When a person's graded sets close, for their calendar: those that are out and have no try handed in or a fresh one. */
@ApplicationScoped
class DueDates implements CalendarSource {
    private static final Duration REMINDER = Duration.ofDays(1);

    private final LearnerSets sets;

    DueDates(LearnerSets sets) {
        this.sets = sets;
    }

    @Override
    public List<CalendarEvent> eventsFor(UUID person) {
        return sets.of(person).stream()
                .filter(view -> view.set().isPublished())
                .filter(view -> view.tries().stream().allMatch(line -> line.handedInAt() == null)
                        || view.freshTries() > 0 && view.isToDo())
                .map(view -> CalendarEvent.at(
                                view.closesAt(),
                                "graded-set-" + view.set().id(),
                                "Closes: " + view.set().title(),
                                "A graded set of %d items. Hand it in before it closes."
                                        .formatted(view.set().items()))
                        .remindedBefore(REMINDER))
                .toList();
    }
}
