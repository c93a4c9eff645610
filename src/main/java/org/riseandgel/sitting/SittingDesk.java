package org.riseandgel.sitting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.course.Check;
import org.riseandgel.exercise.ReadAnswer;
import org.riseandgel.platform.chance.Seeds;
import org.riseandgel.platform.school.SchoolSettings;

/** Sitting a check: it is begun, answers are saved one by one, and all of it is handed in and marked at once. */
@ApplicationScoped
class SittingDesk {
    private final SittingStore store;
    private final TalkStore talks;
    private final Beginnings beginnings;
    private final KeptDraws draws;
    private final Recalls recalls;
    private final Event<SittingHandedIn> handedIn;
    private final SchoolSettings school;
    private final Seeds seeds;
    private final Clock clock;

    SittingDesk(
            SittingStore store,
            TalkStore talks,
            Beginnings beginnings,
            KeptDraws draws,
            Recalls recalls,
            Event<SittingHandedIn> handedIn,
            SchoolSettings school,
            Seeds seeds,
            Clock clock) {
        this.store = store;
        this.talks = talks;
        this.beginnings = beginnings;
        this.draws = draws;
        this.recalls = recalls;
        this.handedIn = handedIn;
        this.school = school;
        this.seeds = seeds;
        this.clock = clock;
    }

    /** What became of an answer that was saved. */
    sealed interface Saved {
        /** It is stored. */
        record Stored() implements Saved {}

        /** It cannot be judged as it is; nothing is stored, and an earlier answer stays. */
        record AskAgain(String question) implements Saved {}

        /** The sitting was handed in meanwhile; nothing is stored. */
        record TooLate() implements Saved {}
    }

    /** Whether somebody with these sittings of the check, and these talks about it, may begin now. */
    TryRule.Answer mayBegin(UUID person, Check check, List<StoredSitting> past, List<TalkStore.Talk> noted) {
        TryRule.Answer answer = TryRule.answer(
                check.talkAfterFailed(),
                today(now()),
                past.stream().map(StoredSitting::asPast).toList(),
                noted.stream().map(TalkStore.Talk::notedAt).max(Comparator.naturalOrder()));
        boolean called = !check.isRecall()
                || answer instanceof TryRule.Answer.GoOn
                || recalls.waitingSince(check, person, begun(past)).isPresent();
        return called ? answer : new TryRule.Answer.NotCalled();
    }

    private static List<Instant> begun(List<StoredSitting> past) {
        return past.stream().map(StoredSitting::startedAt).toList();
    }

    /**
     * Begins a sitting, or takes up the open one. However often and wherever it is pressed, there is one.
     *
     * @return the sitting to go on with; empty when none may be begun now
     */
    @Transactional
    Optional<UUID> begin(UUID person, Check check) {
        TryRule.Answer answer = mayBegin(person, check, store.of(person, check.id()), talks.of(person, check.id()));
        if (answer instanceof TryRule.Answer.GoOn open) {
            return Optional.of(open.sitting());
        }
        return answer instanceof TryRule.Answer.Begin ? fresh(person, check) : Optional.empty();
    }

    /** Another press may have been quicker. Then its sitting is the one to go on with. */
    private Optional<UUID> fresh(UUID person, Check check) {
        return beginnings
                .of(person, check, seeds.next(), now())
                .map(StoredSitting::id)
                .or(() -> store.open(person, check.id()));
    }

    /** Saves an answer to an item; empty when the sitting is not theirs or has no such item. */
    Optional<Saved> save(UUID person, UUID sitting, int number, String typed) {
        return store.load(person, sitting)
                .flatMap(stored -> stored.item(number).map(item -> save(stored, item, typed)));
    }

    private Saved save(StoredSitting sitting, StoredItem item, String typed) {
        if (!sitting.isOpen()) {
            return new Saved.TooLate();
        }
        ReadAnswer answer = Marking.read(draws.of(item), typed, school.decimalMark());
        if (!answer.isClear()) {
            return new Saved.AskAgain(answer.question());
        }
        return store.save(sitting.person(), sitting.id(), item.number(), answer, now())
                ? new Saved.Stored()
                : new Saved.TooLate();
    }

    /** Hands a sitting in and marks it. One that was handed in before stays as it is. */
    @Transactional
    void handIn(UUID person, UUID sitting) {
        store.hold(person, sitting)
                .map(open -> Marking.handedIn(open, draws::of, school.decimalMark(), now()))
                .ifPresent(this::handIn);
    }

    /** Whoever has to know of it is told in the same transaction. */
    private void handIn(StoredSitting marked) {
        store.handIn(marked);
        handedIn.fire(new SittingHandedIn(marked.person(), marked.id()));
    }

    private LocalDate today(Instant now) {
        return LocalDate.ofInstant(now, school.zone());
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
