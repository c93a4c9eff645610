package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
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

    /** How many published sets of a cohort each person has handed in; who has none is left out. */
    public Map<UUID, Long> handedInPerPerson(UUID cohort) {
        Set<UUID> counted = sets.ofCohorts(List.of(cohort)).stream()
                .filter(GradedSet::isPublished)
                .map(GradedSet::id)
                .collect(Collectors.toSet());
        return works.ofCohort(cohort).stream()
                .filter(work -> work.handedInAt() != null && counted.contains(work.set()))
                .collect(Collectors.groupingBy(
                        Work::person,
                        Collectors.mapping(Work::set, Collectors.collectingAndThen(Collectors.toSet(), found ->
                                (long) found.size()))));
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
