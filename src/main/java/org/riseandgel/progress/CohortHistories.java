package org.riseandgel.progress;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.account.CohortView;
import org.riseandgel.account.People;
import org.riseandgel.grading.GradedResults;
import org.riseandgel.practice.AnswerHistory;

/**
 * Who learned in a cohort from when to when, and what they did in that time. Whoever moves takes nothing along and leaves
 * nothing behind: each answer counts in the cohorts of its moment, each graded set in its own.
 */
@ApplicationScoped
class CohortHistories {
    private final People people;
    private final AnswerHistory answers;
    private final GradedResults graded;

    CohortHistories(People people, AnswerHistory answers, GradedResults graded) {
        this.people = people;
        this.answers = answers;
        this.graded = graded;
    }

    /**
     * One span of one person.
     *
     * @param until when it ended; null while it lasts
     * @param handedIn graded sets of this cohort that the person handed in at any time
     */
    record Line(UUID person, String name, Instant from, Instant until, int answers, int right, long handedIn) {}

    /** A cohort with everybody who ever learned in it. */
    record History(CohortView cohort, List<Line> lines) {}

    /** The history of a cohort; empty when it may not be seen. */
    Optional<History> of(Boards.Asker asker, UUID cohort) {
        return people.learnersSeenBy(asker.person(), asker.office(), cohort)
                .map(seen -> new History(seen.cohort(), lines(cohort)));
    }

    private List<Line> lines(UUID cohort) {
        List<People.Membership> spans = people.learnedIn(cohort);
        List<AnswerHistory.Tally> tallies = answers.tallies(spans.stream()
                .map(span -> new AnswerHistory.Span(span.person(), span.from(), span.until()))
                .toList());
        Map<UUID, Long> handedIn = graded.handedInPerPerson(cohort);
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < spans.size(); i++) {
            People.Membership span = spans.get(i);
            lines.add(new Line(
                    span.person(),
                    span.name(),
                    span.from(),
                    span.until(),
                    tallies.get(i).answers(),
                    tallies.get(i).right(),
                    handedIn.getOrDefault(span.person(), 0L)));
        }
        return lines;
    }
}
