package org.riseandgel.sitting;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Recall checks come about 30, 91 and 182 days after a clearance, and wait until they are sat. */
class RecallRuleTest {
    private static final List<Integer> DAYS = List.of(30, 91, 182);
    private static final Instant CLEARED = Instant.parse("2027-01-04T09:00:00Z");
    private static final UUID PERSON = new UUID(11, 4711);

    @Test
    void eachDateLiesWithinSixDaysOfItsOwn() {
        for (int person = 0; person < 500; person++) {
            List<Instant> dates = RecallRule.dates(DAYS, new UUID(person, 7 - person), CLEARED);
            for (int i = 0; i < DAYS.size(); i++) {
                long days = Duration.between(CLEARED, dates.get(i)).toDays();
                assertThat(days).isBetween(DAYS.get(i) - 6L, DAYS.get(i) + 6L);
            }
        }
    }

    @Test
    void theDatesDifferFromPersonToPersonAndFromClearanceToClearance() {
        Set<Instant> people = new HashSet<>();
        Set<Duration> clearances = new HashSet<>();
        for (int i = 0; i < 300; i++) {
            people.add(RecallRule.dates(DAYS, new UUID(1, i), CLEARED).get(0));
            Instant cleared = CLEARED.plusSeconds(i);
            clearances.add(Duration.between(
                    cleared, RecallRule.dates(DAYS, PERSON, cleared).get(0)));
        }
        assertThat(people).hasSize(13);
        assertThat(clearances).hasSize(13);
        assertThat(RecallRule.dates(DAYS, PERSON, CLEARED)).isEqualTo(RecallRule.dates(DAYS, PERSON, CLEARED));
    }

    @Test
    void nothingWaitsBeforeTheFirstDate() {
        Instant first = RecallRule.dates(DAYS, PERSON, CLEARED).get(0);
        assertThat(waiting(List.of(), first.minusSeconds(1))).isEmpty();
        assertThat(waiting(List.of(), first)).contains(first);
    }

    @Test
    void itWaitsUntilASittingIsBegunAndThenForTheNextDate() {
        List<Instant> dates = RecallRule.dates(DAYS, PERSON, CLEARED);
        Instant late = dates.get(0).plus(Duration.ofDays(20));
        assertThat(waiting(List.of(), late)).contains(dates.get(0));
        assertThat(waiting(List.of(late), late.plusSeconds(1))).isEmpty();
        assertThat(waiting(List.of(late), dates.get(1))).contains(dates.get(1));
    }

    @Test
    void oneSittingAnswersAllDatesBeforeIt() {
        List<Instant> dates = RecallRule.dates(DAYS, PERSON, CLEARED);
        assertThat(waiting(List.of(), dates.get(2))).contains(dates.get(2));
        assertThat(waiting(List.of(dates.get(2)), dates.get(2).plus(Duration.ofDays(900))))
                .isEmpty();
    }

    @Test
    void aSittingFromBeforeTheClearanceAnswersNothing() {
        Instant first = RecallRule.dates(DAYS, PERSON, CLEARED).get(0);
        assertThat(waiting(List.of(CLEARED.minusSeconds(9)), first)).contains(first);
    }

    private static java.util.Optional<Instant> waiting(List<Instant> begun, Instant now) {
        return RecallRule.waitingSince(DAYS, PERSON, CLEARED, begun, now);
    }
}
