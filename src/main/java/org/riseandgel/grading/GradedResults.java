package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.account.CohortView;
import org.riseandgel.account.People;
import org.riseandgel.platform.school.SchoolSettings;

/** What a person's graded sets came to, for those who teach and for other features. */
@ApplicationScoped
public class GradedResults {
    private final SetStore sets;
    private final WorkStore works;
    private final PartViews parts;
    private final People people;
    private final SchoolSettings school;
    private final Clock clock;

    GradedResults(SetStore sets, WorkStore works, PartViews parts, People people, SchoolSettings school, Clock clock) {
        this.sets = sets;
        this.works = works;
        this.parts = parts;
        this.people = people;
        this.school = school;
        this.clock = clock;
    }

    /**
     * A set of a person.
     *
     * @param state of the set, in words
     * @param tries how many tries were begun
     * @param points of the best try; empty when none was begun
     */
    public record Line(UUID set, String title, String state, Instant closesAt, int tries, String points) {}

    /** The published sets of a person that the one who asks may see: the office all, others those of their cohorts. */
    public List<Line> of(UUID person, UUID asker, boolean office) {
        List<UUID> learnsIn =
                people.cohortsLearnedIn(person).stream().map(CohortView::id).toList();
        List<UUID> mayBeSeen =
                people.cohortsTaughtBy(asker).stream().map(CohortView::id).toList();
        List<Work> tries = works.ofPerson(person);
        Instant now = clock.instant();
        return sets.forLearner(person, learnsIn).stream()
                .filter(set -> office || mayBeSeen.contains(set.cohort()))
                .map(set -> line(
                        set,
                        tries.stream()
                                .filter(work -> work.set().equals(set.id()))
                                .toList(),
                        now))
                .toList();
    }

    private Line line(GradedSet set, List<Work> tries, Instant now) {
        Optional<Score> best = tries.stream().map(parts::score).max(Comparator.naturalOrder());
        return new Line(
                set.id(),
                set.title(),
                SetLists.state(set, now),
                set.closesAt(),
                tries.size(),
                best.map(score -> score.words(school.decimalMark())).orElse(""));
    }
}
