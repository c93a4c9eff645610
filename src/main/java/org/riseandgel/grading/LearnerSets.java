package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.account.CohortView;
import org.riseandgel.account.People;
import org.riseandgel.platform.school.SchoolSettings;

/** The sets of an apprentice: what is to be done, until when, and what came of it as far as it may be told. */
@ApplicationScoped
class LearnerSets {
    private final SetStore store;
    private final WorkStore works;
    private final WorkDesk desk;
    private final PartViews views;
    private final People people;
    private final SchoolSettings school;
    private final Clock clock;

    LearnerSets(
            SetStore store,
            WorkStore works,
            WorkDesk desk,
            PartViews views,
            People people,
            SchoolSettings school,
            Clock clock) {
        this.store = store;
        this.works = works;
        this.desk = desk;
        this.views = views;
        this.people = people;
        this.school = school;
        this.clock = clock;
    }

    /**
     * A set as its apprentice sees it.
     *
     * @param closesAt when it closes for this person
     * @param freshTries tries that came with extensions, in addition to those of the set
     * @param tellsAt when results are told; null when they are told at once
     * @param state where the person stands with it, in words
     * @param mayBegin whether a try can be begun now
     * @param open the open try; null when there is none
     * @param tries the tries so far
     * @param best the points of the best try; empty when nothing may be told or there is none
     */
    record SetView(
            GradedSet set,
            Instant closesAt,
            boolean extended,
            int freshTries,
            Instant tellsAt,
            String state,
            boolean mayBegin,
            UUID open,
            List<TryLine> tries,
            String best) {
        public boolean isToDo() {
            return mayBegin || open != null;
        }
    }

    /** One try; its points are empty when they may not be told yet. */
    record TryLine(UUID work, int nth, Instant begunAt, Instant handedInAt, int answered, int parts, String points) {}

    /** The sets that this person has or had to work, those to do first. */
    List<SetView> of(UUID person) {
        List<UUID> cohorts =
                people.cohortsLearnedIn(person).stream().map(CohortView::id).toList();
        Map<UUID, List<Work>> tries = works.ofPerson(person).stream().collect(Collectors.groupingBy(Work::set));
        return store.forLearner(person, cohorts).stream()
                .map(set -> view(person, set, tries.getOrDefault(set.id(), List.of())))
                .sorted(Comparator.comparing(SetView::isToDo).reversed())
                .toList();
    }

    /** One set; empty when it is not this person's. */
    Optional<SetView> view(UUID person, UUID set) {
        return set(person, set).map(found -> view(person, found, works.of(set, person)));
    }

    /** The stored set, if the person learns in its cohort or has worked it. */
    Optional<GradedSet> set(UUID person, UUID set) {
        return store.find(set)
                .filter(found -> found.publishedAt() != null)
                .filter(found ->
                        desk.learns(person, found) || !works.of(set, person).isEmpty());
    }

    private SetView view(UUID person, GradedSet set, List<Work> tries) {
        Instant now = clock.instant();
        List<SetStore.Extension> extensions = store.extensions(set.id());
        Instant closes = TryRule.closes(set, extensions, person);
        int most = TryRule.tries(set, extensions, person);
        TryRule.Answer may = TryRule.answer(set, closes, most, tries, desk.learns(person, set), now);
        boolean tells = TryRule.tells(set, extensions, person, now);
        Optional<Score> best = tries.stream().map(views::score).max(Comparator.naturalOrder());
        return new SetView(
                set,
                closes,
                !closes.equals(set.closesAt()),
                most - set.tries(),
                set.feedback() == Policy.EACH ? null : TryRule.toldAt(set, extensions, person),
                state(may, tries),
                may instanceof TryRule.Answer.Begin,
                may instanceof TryRule.Answer.GoOn open ? open.work() : null,
                tries.stream().map(work -> line(work, tells)).toList(),
                best.filter(score -> tells && set.isPublished())
                        .map(score -> score.words(school.decimalMark()))
                        .orElse(""));
    }

    private TryLine line(Work work, boolean tells) {
        int parts = work.items().stream().mapToInt(views::parts).sum();
        int answered =
                work.items().stream().mapToInt(item -> item.answers().size()).sum();
        return new TryLine(
                work.id(),
                work.nth(),
                work.begunAt(),
                work.handedInAt(),
                answered,
                parts,
                tells ? views.score(work).words(school.decimalMark()) : "");
    }

    private static String state(TryRule.Answer may, List<Work> tries) {
        if (may instanceof TryRule.Answer.Withdrawn) {
            return "Withdrawn: it does not count";
        }
        if (may instanceof TryRule.Answer.NotYet) {
            return "Not open yet";
        }
        if (may instanceof TryRule.Answer.GoOn) {
            return "Begun, not handed in";
        }
        if (may instanceof TryRule.Answer.Begin begin) {
            return begin.nth() == 1 ? "Open, not begun" : "Handed in; another try is open";
        }
        if (may instanceof TryRule.Answer.UsedUp) {
            return "Handed in";
        }
        if (tries.isEmpty()) {
            return may instanceof TryRule.Answer.Closed ? "Closed, not worked" : "Not open to you";
        }
        return may instanceof TryRule.Answer.Closed ? "Closed" : "Handed in";
    }
}
