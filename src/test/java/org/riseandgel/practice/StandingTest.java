package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Expected numbers are worked by hand from the rule: average' = 0.7 · average + 0.3 · score, from 0. */
class StandingTest {
    private static final Instant MORNING = Instant.parse("2027-03-01T08:00:00Z");

    private static Mark mark(boolean right, boolean hinted, int day) {
        return mark(right, hinted, day, Rung.STEPS, Mark.Ending.NOT_YET);
    }

    private static Mark mark(boolean right, boolean hinted, int day, Rung rung, Mark.Ending ending) {
        Instant at = MORNING.plusSeconds(86_400L * day);
        LocalDate date = at.atZone(ZoneOffset.UTC).toLocalDate();
        return new Mark(right, hinted, at, date, new Mark.Draw(rung, ending, 1));
    }

    private static Standing right(Standing from, int times, int day) {
        Standing standing = from;
        for (int i = 0; i < times; i++) {
            standing = standing.after(mark(true, false, day));
        }
        return standing;
    }

    private static Standing wrong(Standing from, int times, int day) {
        Standing standing = from;
        for (int i = 0; i < times; i++) {
            standing = standing.after(mark(false, false, day));
        }
        return standing;
    }

    @Test
    void nobodyHasBegunWithoutAnAnswer() {
        assertThat(Standing.NONE.state()).isEqualTo(SkillState.NOT_BEGUN);
        assertThat(Standing.NONE.ladder().level()).isEqualTo(1);
    }

    @Test
    void theAverageMovesThreeTenthsOfTheWay() {
        // 0.3, 0.51, 0.357: by hand; exact but for the last binary digit.
        Standing standing = right(Standing.NONE, 1, 0);
        assertThat(standing.average()).isCloseTo(0.3, within(1e-12));
        standing = right(standing, 1, 0);
        assertThat(standing.average()).isCloseTo(0.51, within(1e-12));
        standing = wrong(standing, 1, 0);
        assertThat(standing.average()).isCloseTo(0.357, within(1e-12));
        assertThat(standing.answers()).isEqualTo(3);
        assertThat(standing.rightAnswers()).isEqualTo(2);
    }

    @Test
    void anAnswerAfterAHintCountsAsNothingButIsNoMiss() {
        Standing stuck = wrong(Standing.NONE, 2, 0).after(mark(true, true, 0));
        assertThat(stuck.average()).isZero();
        assertThat(stuck.rightAnswers()).isEqualTo(1);
        assertThat(stuck.wrongInRow()).isZero();
        assertThat(stuck.rightInRow()).isZero();
    }

    @Test
    void masteryNeedsTheAverageAndThreeDays() {
        // 1 − 0.7⁵ = 0.83193, 1 − 0.7⁶ = 0.882351: by hand.
        Standing sixOnOneDay = right(Standing.NONE, 6, 0);
        assertThat(sixOnOneDay.average()).isCloseTo(0.882351, within(1e-9));
        assertThat(sixOnOneDay.state()).isEqualTo(SkillState.GROWING);
        Standing twoDays = right(right(Standing.NONE, 3, 0), 3, 1);
        assertThat(twoDays.state()).isEqualTo(SkillState.GROWING);
        Standing fiveOnThreeDays = right(right(right(Standing.NONE, 2, 0), 2, 1), 1, 2);
        assertThat(fiveOnThreeDays.state()).isEqualTo(SkillState.GROWING);
        assertThat(right(fiveOnThreeDays, 1, 2).state()).isEqualTo(SkillState.MASTERED);
    }

    @Test
    void oneMissTakesTheWordMasteredAwayButNotTheDayItWasReached() {
        Standing mastered = right(right(right(Standing.NONE, 2, 0), 2, 1), 2, 2);
        assertThat(mastered.state()).isEqualTo(SkillState.MASTERED);
        assertThat(mastered.masteredOn()).isEqualTo(LocalDate.parse("2027-03-03"));
        Standing missed = wrong(mastered, 1, 9);
        assertThat(missed.state()).isEqualTo(SkillState.GROWING);
        assertThat(missed.masteredOn()).isEqualTo(mastered.masteredOn());
        assertThat(missed.firstDay()).isEqualTo(LocalDate.parse("2027-03-01"));
    }

    @Test
    void threeWrongInARowIsStuckUntilOneIsRight() {
        Standing mastered = right(right(right(Standing.NONE, 9, 0), 2, 1), 2, 2);
        assertThat(wrong(mastered, 2, 2).state()).isNotEqualTo(SkillState.STUCK);
        Standing stuck = wrong(mastered, 3, 2);
        assertThat(stuck.state()).isEqualTo(SkillState.STUCK);
        assertThat(right(stuck, 1, 2).state()).isNotEqualTo(SkillState.STUCK);
    }

    @Test
    void aDayCountsOnceAndAClockPutBackCountsNoDay() {
        Standing standing = right(right(Standing.NONE, 2, 3), 1, 4);
        assertThat(standing.days()).isEqualTo(2);
        Standing back = right(standing, 1, 3);
        assertThat(back.days()).isEqualTo(2);
        assertThat(back.lastDay()).isEqualTo(standing.lastDay());
        assertThat(back.lastAt()).isEqualTo(standing.lastAt());
    }

    @Test
    void onlyTheEndOfADrawMovesTheLadder() {
        Standing halfWay = right(Standing.NONE, 5, 0);
        assertThat(halfWay.ladder()).isEqualTo(Ladder.FOOT);
        Standing two = halfWay.after(mark(true, false, 0, Rung.STEPS, Mark.Ending.RIGHT))
                .after(mark(true, false, 0, Rung.STEPS, Mark.Ending.RIGHT));
        assertThat(two.ladder().offered()).isEqualTo(Rung.PLAN);
        Standing down = two.after(mark(false, false, 0, Rung.PLAN, Mark.Ending.WRONG))
                .after(mark(true, false, 0, Rung.PLAN, Mark.Ending.WRONG));
        assertThat(down.ladder().offered()).isEqualTo(Rung.STEPS);
    }

    @Property
    void everyStandingStaysWithinItsBounds(@ForAll("marks") @Size(max = 60) List<Mark> marks) {
        Standing standing = Standing.NONE;
        for (Mark mark : marks) {
            standing = standing.after(mark);
            assertThat(standing.average()).isBetween(0.0, 1.0);
            assertThat(standing.rightAnswers()).isBetween(0, standing.answers());
            assertThat(standing.days()).isBetween(1, standing.answers());
            assertThat(standing.wrongInRow() == 0 || standing.rightInRow() == 0).isTrue();
            assertThat(standing.ladder().level()).isBetween(1, 3);
        }
        assertThat(standing.answers()).isEqualTo(marks.size());
    }

    @Provide
    Arbitrary<List<Mark>> marks() {
        return Combinators.combine(
                        Arbitraries.of(true, false),
                        Arbitraries.of(true, false),
                        Arbitraries.integers().between(0, 30),
                        Arbitraries.of(Rung.STEPS, Rung.PLAN, Rung.BARE, Rung.JOB),
                        Arbitraries.of(Mark.Ending.values()))
                .as(StandingTest::mark)
                .list();
    }
}
