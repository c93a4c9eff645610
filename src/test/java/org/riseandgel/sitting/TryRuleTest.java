package org.riseandgel.sitting;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.riseandgel.sitting.TryRule.Answer;
import org.riseandgel.sitting.TryRule.Past;

/** One try a day, one open sitting at a time, and a talk after failing several times in a row. */
class TryRuleTest {
    private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);
    private static final int TALK_AFTER = 3;

    @Test
    void whoNeverSatMayBegin() {
        assertThat(answer(MONDAY, List.of())).isInstanceOf(Answer.Begin.class);
    }

    @Test
    void oneTryADayWhetherItPassedOrNot() {
        for (boolean passed : List.of(true, false)) {
            List<Past> past = List.of(handedIn(MONDAY, passed));
            assertThat(answer(MONDAY, past)).isEqualTo(new Answer.NotToday(MONDAY.plusDays(1)));
            assertThat(answer(MONDAY.plusDays(1), past)).isInstanceOf(Answer.Begin.class);
        }
    }

    @Test
    void anOpenSittingIsFinishedFirstOnWhateverDay() {
        Past open = new Past(UUID.randomUUID(), MONDAY, null, false);
        for (int days = 0; days < 40; days += 13) {
            assertThat(answer(MONDAY.plusDays(days), List.of(open))).isEqualTo(new Answer.GoOn(open.id()));
        }
    }

    @Test
    void anOpenSittingIsGoneOnWithAlsoWhenATalkIsWaitedFor() {
        Past open = new Past(UUID.randomUUID(), MONDAY.plusDays(9), null, false);
        List<Past> past = new ArrayList<>(failed(3));
        past.add(open);
        assertThat(answer(MONDAY.plusDays(9), past)).isEqualTo(new Answer.GoOn(open.id()));
    }

    @Test
    void aSittingCountsForTheDayItWasBegunEvenIfHandedInLater() {
        Past begunMonday = new Past(UUID.randomUUID(), MONDAY, at(MONDAY.plusDays(2)), false);
        assertThat(answer(MONDAY.plusDays(2), List.of(begunMonday))).isInstanceOf(Answer.Begin.class);
    }

    @Test
    void afterThreeFailedATalkComesFirst() {
        assertThat(answer(MONDAY.plusDays(20), failed(2))).isInstanceOf(Answer.Begin.class);
        assertThat(answer(MONDAY.plusDays(20), failed(3))).isEqualTo(new Answer.TalkFirst(3));
        assertThat(answer(MONDAY.plusDays(20), failed(4))).isEqualTo(new Answer.TalkFirst(4));
    }

    @Test
    void aTalkBeginsTheCountAnewAndDoesNotGiveASecondTryThatDay() {
        Optional<Instant> talk = Optional.of(at(MONDAY.plusDays(2)).plusSeconds(60));
        List<Past> past = new ArrayList<>(failed(3));
        assertThat(TryRule.answer(TALK_AFTER, MONDAY.plusDays(2), past, talk))
                .isEqualTo(new Answer.NotToday(MONDAY.plusDays(3)));
        assertThat(TryRule.answer(TALK_AFTER, MONDAY.plusDays(3), past, talk)).isInstanceOf(Answer.Begin.class);
        past.add(handedIn(MONDAY.plusDays(3), false));
        past.add(handedIn(MONDAY.plusDays(4), false));
        assertThat(TryRule.answer(TALK_AFTER, MONDAY.plusDays(5), past, talk)).isInstanceOf(Answer.Begin.class);
        past.add(handedIn(MONDAY.plusDays(5), false));
        assertThat(TryRule.answer(TALK_AFTER, MONDAY.plusDays(6), past, talk)).isEqualTo(new Answer.TalkFirst(3));
    }

    @Test
    void aTalkBeforeTheFailuresIsNoTalkAboutThem() {
        Optional<Instant> talk = Optional.of(at(MONDAY).minusSeconds(60));
        assertThat(TryRule.answer(TALK_AFTER, MONDAY.plusDays(9), failed(3), talk))
                .isEqualTo(new Answer.TalkFirst(3));
    }

    @Test
    void aPassedSittingBeginsTheCountAnew() {
        List<Past> past = new ArrayList<>(failed(2));
        past.add(handedIn(MONDAY.plusDays(2), true));
        past.add(handedIn(MONDAY.plusDays(3), false));
        past.add(handedIn(MONDAY.plusDays(4), false));
        assertThat(answer(MONDAY.plusDays(9), past)).isInstanceOf(Answer.Begin.class);
    }

    @Test
    void aClockThatWasSetBackGivesNoSecondTry() {
        List<Past> past = List.of(handedIn(MONDAY.plusDays(1), false));
        assertThat(answer(MONDAY, past)).isEqualTo(new Answer.NotToday(MONDAY.plusDays(2)));
    }

    private static Answer answer(LocalDate today, List<Past> past) {
        return TryRule.answer(TALK_AFTER, today, past, Optional.empty());
    }

    private static List<Past> failed(int times) {
        List<Past> past = new ArrayList<>();
        for (int day = 0; day < times; day++) {
            past.add(handedIn(MONDAY.plusDays(day), false));
        }
        return past;
    }

    private static Past handedIn(LocalDate day, boolean passed) {
        return new Past(UUID.randomUUID(), day, at(day), passed);
    }

    private static Instant at(LocalDate day) {
        return day.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC);
    }
}
