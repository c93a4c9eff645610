package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** LX-12: three right on day one, then about day 2, 7 and 21, then every four to five weeks; a miss sets back. */
class ReturnsTest {
    private static final LocalDate FIRST = LocalDate.parse("2027-03-01");

    private static Returns right(Returns from, int day, int times) {
        Returns returns = from.onNewDay();
        for (int i = 0; i < times; i++) {
            returns = returns.after(Mark.Ending.RIGHT, FIRST.plusDays(day), 1);
        }
        return returns;
    }

    private static Returns wrong(Returns from, int day) {
        return from.onNewDay().after(Mark.Ending.WRONG, FIRST.plusDays(day), 1);
    }

    private static long dueAfter(Returns returns) {
        return returns.dueOn().toEpochDay() - FIRST.toEpochDay();
    }

    @Test
    void whoIsAlwaysRightComesBackOnDays2And7And21AndThenEveryFourToFiveWeeks() {
        Returns returns = right(Returns.NONE, 0, 3);
        assertThat(dueAfter(returns)).isEqualTo(2);
        returns = right(returns, 2, 1);
        assertThat(dueAfter(returns)).isEqualTo(7);
        returns = right(returns, 7, 1);
        assertThat(dueAfter(returns)).isEqualTo(21);
        returns = right(returns, 21, 1);
        assertThat(dueAfter(returns)).isEqualTo(52);
        returns = right(returns, 52, 1);
        assertThat(dueAfter(returns) - 52).isBetween(28L, 35L);
    }

    @Test
    void threeRightMustFallOnOneDay() {
        Returns returns = right(right(Returns.NONE, 0, 2), 1, 2);
        assertThat(returns.dueOn()).isNull();
        assertThat(right(returns, 3, 3).dueOn()).isEqualTo(FIRST.plusDays(5));
    }

    @Test
    void aMissMakesItDueAtOnceAndTheGapIsTheOneBefore() {
        Returns third = right(right(right(Returns.NONE, 0, 3), 2, 1), 7, 1);
        Returns missed = wrong(third, 21);
        assertThat(missed.isDue(FIRST.plusDays(21))).isTrue();
        assertThat(missed.step()).isEqualTo(2);
        Returns again = missed.after(Mark.Ending.RIGHT, FIRST.plusDays(21), 1);
        assertThat(dueAfter(again)).as("21 and the gap of five days").isEqualTo(26);
        assertThat(dueAfter(right(again, 26, 1))).as("then the gap of fourteen").isEqualTo(40);
    }

    @Test
    void aMissBeforeItIsDueBringsItForward() {
        Returns early = wrong(right(right(Returns.NONE, 0, 3), 2, 1), 4);
        assertThat(dueAfter(early)).isEqualTo(4);
    }

    @Test
    void twoMissesInARowSetItBackOnce() {
        Returns third = right(right(right(Returns.NONE, 0, 3), 2, 1), 7, 1);
        Returns twice = wrong(wrong(third, 21), 21);
        assertThat(twice.step()).isEqualTo(2);
    }

    @Test
    void beingEarlyChangesNothingAndBeingLateCountsFromTheDayItWasDone() {
        Returns learned = right(Returns.NONE, 0, 3);
        assertThat(right(learned, 1, 4)).isEqualTo(learned);
        Returns late = right(learned, 30, 1);
        assertThat(dueAfter(late)).isEqualTo(35);
        assertThat(learned.daysOverdue(FIRST.plusDays(30))).isEqualTo(28);
    }

    @Test
    void whatIsMadeOfFactsWantsThreeRightOnADayOfReturn() {
        Returns learned = right(Returns.NONE, 0, 3);
        LocalDate day = FIRST.plusDays(2);
        Returns two = learned.after(Mark.Ending.RIGHT, day, 3).after(Mark.Ending.RIGHT, day, 3);
        assertThat(two.isDue(day)).isTrue();
        assertThat(two.after(Mark.Ending.RIGHT, day, 3).isDue(day)).isFalse();
    }

    @Test
    void helpNeitherHelpsNorHarms() {
        Returns learned = right(Returns.NONE, 0, 3);
        assertThat(learned.after(Mark.Ending.HELPED, FIRST.plusDays(2), 1)).isEqualTo(learned);
        assertThat(Returns.NONE.after(Mark.Ending.HELPED, FIRST, 1)).isEqualTo(Returns.NONE);
    }

    /** An ending on a day that is so many days after the one before. */
    record Act(Mark.Ending ending, int later) {}

    @Property
    void theNextReturnIsNeverFartherThanTheLongestGapAndNeverBeforeTheDay(@ForAll("acts") List<Act> acts) {
        Returns returns = Returns.NONE;
        LocalDate day = FIRST;
        for (Act act : acts) {
            day = day.plusDays(act.later);
            int before = returns.step();
            returns = (act.later > 0 ? returns.onNewDay() : returns).after(act.ending, day, 1);
            assertThat(returns.step()).isBetween(0, 4);
            assertThat(Math.abs(returns.step() - before)).isLessThanOrEqualTo(1);
            assertThat(returns.step() == 0).isEqualTo(returns.dueOn() == null);
            if (returns.dueOn() != null) {
                assertThat(returns.dueOn()).isBeforeOrEqualTo(day.plusDays(31));
            }
            if (act.ending == Mark.Ending.WRONG && returns.step() > 0) {
                assertThat(returns.isDue(day)).isTrue();
            }
        }
    }

    @Provide
    Arbitrary<List<Act>> acts() {
        return Combinators.combine(
                        Arbitraries.of(Mark.Ending.values()),
                        Arbitraries.integers().between(0, 40))
                .as(Act::new)
                .list()
                .ofMaxSize(50);
    }
}
