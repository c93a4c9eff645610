package org.riseandgel.grading;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Who may work a set when, and when results are told. */
class TryRuleTest {
    private static final Instant OPENS = Instant.parse("2027-03-01T08:00:00Z");
    private static final Instant CLOSES = Instant.parse("2027-03-08T20:00:00Z");
    private static final UUID ME = UUID.randomUUID();
    private static final UUID OTHER = UUID.randomUUID();

    private static GradedSet set(SetState state, Policy policy, int tries) {
        return new GradedSet(
                UUID.randomUUID(),
                UUID.randomUUID(),
                "Set",
                "",
                state,
                2,
                tries,
                policy,
                null,
                null,
                OPENS,
                CLOSES,
                ME,
                OPENS,
                OPENS,
                null,
                null,
                List.of());
    }

    private static Work work(int nth, Instant handedIn) {
        return new Work(UUID.randomUUID(), UUID.randomUUID(), ME, nth, OPENS, handedIn, List.of());
    }

    private static SetStore.Extension until(UUID person, Instant moment) {
        return given(person, moment, OPENS, false);
    }

    private static SetStore.Extension given(UUID person, Instant until, Instant at, boolean freshTry) {
        return new SetStore.Extension(person, until, "ill", OTHER, at, freshTry);
    }

    private static TryRule.Answer at(Instant now, List<Work> tries) {
        return TryRule.answer(set(SetState.PUBLISHED, Policy.EACH, 2), CLOSES, 2, tries, true, now);
    }

    @Test
    void theWindowHoldsItsOpeningAndNotItsClosing() {
        assertThat(at(OPENS.minusNanos(1), List.of())).isInstanceOf(TryRule.Answer.NotYet.class);
        assertThat(at(OPENS, List.of())).isEqualTo(new TryRule.Answer.Begin(1));
        assertThat(at(CLOSES.minusNanos(1_000), List.of())).isEqualTo(new TryRule.Answer.Begin(1));
        assertThat(at(CLOSES, List.of())).isInstanceOf(TryRule.Answer.Closed.class);
    }

    @Test
    void anotherTryCanBeBegunOnlyAfterTheOneBeforeAndOnlySoOften() {
        Work open = work(1, null);
        assertThat(at(OPENS, List.of(open))).isEqualTo(new TryRule.Answer.GoOn(open.id()));
        assertThat(at(OPENS, List.of(work(1, OPENS)))).isEqualTo(new TryRule.Answer.Begin(2));
        assertThat(at(OPENS, List.of(work(1, OPENS), work(2, OPENS)))).isInstanceOf(TryRule.Answer.UsedUp.class);
    }

    @Test
    void whoeverLeftTheCohortFinishesAnOpenTryAndBeginsNone() {
        GradedSet set = set(SetState.PUBLISHED, Policy.EACH, 2);
        Work open = work(1, null);
        assertThat(TryRule.answer(set, CLOSES, 2, List.of(open), false, OPENS))
                .isEqualTo(new TryRule.Answer.GoOn(open.id()));
        assertThat(TryRule.answer(set, CLOSES, 2, List.of(), false, OPENS))
                .isInstanceOf(TryRule.Answer.Elsewhere.class);
    }

    @Test
    void aWithdrawnSetIsNotWorked() {
        GradedSet set = set(SetState.WITHDRAWN, Policy.EACH, 2);
        assertThat(TryRule.answer(set, CLOSES, 2, List.of(work(1, null)), true, OPENS))
                .isInstanceOf(TryRule.Answer.Withdrawn.class);
        assertThat(TryRule.isOpen(set, CLOSES, OPENS)).isFalse();
    }

    @Test
    void anExtensionMovesTheClosingOfOnePersonAlone() {
        GradedSet set = set(SetState.PUBLISHED, Policy.EACH, 1);
        Instant later = CLOSES.plusSeconds(3_600);
        assertThat(TryRule.closes(set, List.of(until(ME, later)), ME)).isEqualTo(later);
        assertThat(TryRule.closes(set, List.of(until(ME, later)), OTHER)).isEqualTo(CLOSES);
    }

    @Test
    void resultsWaitForTheLastExtensionWhereTheyWaitAtAll() {
        GradedSet waits = set(SetState.PUBLISHED, Policy.CLOSING, 1);
        Instant later = CLOSES.plusSeconds(3_600);
        List<SetStore.Extension> extensions = List.of(until(OTHER, later));
        assertThat(TryRule.tells(waits, List.of(), ME, CLOSES.minusNanos(1_000)))
                .isFalse();
        assertThat(TryRule.tells(waits, List.of(), ME, CLOSES)).isTrue();
        assertThat(TryRule.tells(waits, extensions, ME, CLOSES)).isFalse();
        assertThat(TryRule.tells(waits, extensions, ME, later)).isTrue();
        assertThat(TryRule.tells(set(SetState.PUBLISHED, Policy.EACH, 1), extensions, ME, OPENS))
                .isTrue();
    }

    @Test
    void whatWasToldIsNotTakenBackByAnExtensionThatComesLater() {
        GradedSet waits = set(SetState.PUBLISHED, Policy.CLOSING, 1);
        Instant after = CLOSES.plusSeconds(60);
        Instant later = CLOSES.plusSeconds(3_600);
        List<SetStore.Extension> late = List.of(given(ME, later, after, true));
        assertThat(TryRule.tells(waits, late, OTHER, after)).isTrue();
        assertThat(TryRule.tells(waits, late, ME, after))
                .as("whoever works again is told when that is over")
                .isFalse();
        assertThat(TryRule.tells(waits, late, ME, later)).isTrue();
        List<SetStore.Extension> prolonged = List.of(until(ME, later), given(ME, later.plusSeconds(60), after, false));
        assertThat(TryRule.tells(waits, prolonged, OTHER, later))
                .as("given while others waited")
                .isFalse();
    }

    @Test
    void anExtensionAfterTheAnswersWereToldGivesOneMoreTry() {
        GradedSet set = set(SetState.PUBLISHED, Policy.EACH, 1);
        GradedSet waits = set(SetState.PUBLISHED, Policy.CLOSING, 1);
        Instant later = CLOSES.plusSeconds(3_600);
        assertThat(TryRule.knowsAnswers(set, List.of(), ME, CLOSES.minusNanos(1_000)))
                .isFalse();
        assertThat(TryRule.knowsAnswers(set, List.of(), ME, CLOSES)).isTrue();
        assertThat(TryRule.knowsAnswers(waits, List.of(until(OTHER, later)), ME, CLOSES))
                .as("nothing is told while somebody else works")
                .isFalse();
        List<SetStore.Extension> fresh = List.of(given(ME, later, CLOSES, true));
        assertThat(TryRule.tries(set, fresh, ME)).isEqualTo(2);
        assertThat(TryRule.tries(set, fresh, OTHER)).isEqualTo(1);
    }
}
