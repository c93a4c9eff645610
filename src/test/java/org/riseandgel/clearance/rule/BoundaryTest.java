package org.riseandgel.clearance.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.riseandgel.clearance.rule.Story.DECIDER;
import static org.riseandgel.clearance.rule.Story.LEA;
import static org.riseandgel.clearance.rule.Story.OTHER;
import static org.riseandgel.clearance.rule.Story.POWDER;
import static org.riseandgel.clearance.rule.Story.at;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** The instants at which an answer changes, to the second: ends of days, leap days, clocks put forward and back. */
class BoundaryTest {
    private static final Duration SECOND = Duration.ofSeconds(1);

    @Test
    void cr09_twelveMonthsFromALeapDayEndOnTheLastOfFebruary() {
        assertThat(grantedOn("2028-02-29T10:00").validThrough()).isEqualTo("2029-02-28");
        assertThat(grantedOn("2027-02-28T10:00").validThrough()).isEqualTo("2028-02-28");
        assertThat(grantedOn("2027-03-01T10:00").validThrough()).isEqualTo("2028-03-01");
    }

    private static Standing grantedOn(String day) {
        Story story = Story.school().evidence(LEA, POWDER, LocalDateTime.parse(day));
        story.grant(LEA, POWDER, DECIDER, LocalDateTime.parse(day));
        return story.lea(day);
    }

    @Test
    void cr09_aRenewalAtMostSixtyDaysEarlyKeepsTheAnniversary() {
        // Granted on 4 March 2027, so through 4 March 2028; sixty days before is 4 January.
        assertThat(renewedOn("2028-01-03")).isEqualTo("2029-01-03");
        assertThat(renewedOn("2028-01-04")).isEqualTo("2029-03-04");
        assertThat(renewedOn("2028-03-04")).isEqualTo("2029-03-04");
        assertThat(renewedOn("2028-03-05")).isEqualTo("2029-03-05");
    }

    private static LocalDate renewedOn(String day) {
        LocalDateTime when = LocalDate.parse(day).atTime(10, 0);
        Story story = Story.cleared().evidence(LEA, POWDER, when);
        story.grant(LEA, POWDER, DECIDER, when);
        return story.standing(LEA, POWDER, when.toString()).validThrough();
    }

    @Test
    void cr09_noLineHoldsLongerThanThirtySixMonthsWhateverItSays() {
        Story story = ending(LocalDate.of(2031, 1, 1), LocalDate.of(2030, 3, 4));
        assertThat(reasons(story, at("2030-03-04T23:59:59"))).isEmpty();
        assertThat(reasons(story, at("2030-03-05T00:00"))).containsExactly(Reason.EXPIRED);
    }

    @Test
    void cr10_expiryIsTheEndOfTheDayWhereTheSchoolIs() {
        LocalDate last = LocalDate.of(2028, 3, 4);
        Story story = ending(last, last);
        Instant end = at("2028-03-05T00:00");
        assertThat(end).as("an hour before midnight in Greenwich").isEqualTo("2028-03-04T23:00:00Z");
        assertThat(reasons(story, end.minusNanos(1))).isEmpty();
        assertThat(reasons(story, end)).containsExactly(Reason.EXPIRED);
        ClearanceRule elsewhere =
                new ClearanceRule(History.of(story.events(), ZoneId.of("America/New_York"), story::age));
        Question question = Question.about(LEA, POWDER);
        assertThat(elsewhere.standing(question, end.plus(Duration.ofHours(5))).isCleared())
                .isTrue();
        assertThat(elsewhere.standing(question, end.plus(Duration.ofHours(6))).reasons())
                .containsExactly(Reason.EXPIRED);
    }

    @Test
    void cr10_aLeapDayIsADay() {
        LocalDate last = LocalDate.of(2028, 2, 29);
        Story story = ending(last, last);
        assertThat(reasons(story, at("2028-02-29T23:59:59"))).isEmpty();
        assertThat(reasons(story, at("2028-03-01T00:00"))).containsExactly(Reason.EXPIRED);
    }

    @Test
    void cr10_aDayMayHaveTwentyThreeOrTwentyFiveHours() {
        // Clocks go forward on 28 March 2027 and back on 31 October 2027.
        assertDayLasts(LocalDate.of(2027, 3, 28), Duration.ofHours(23));
        assertDayLasts(LocalDate.of(2027, 3, 29), Duration.ofHours(24));
        assertDayLasts(LocalDate.of(2027, 10, 31), Duration.ofHours(25));
    }

    private static void assertDayLasts(LocalDate last, Duration hours) {
        Story story = ending(last, last);
        Instant end = at(last.atStartOfDay()).plus(hours);
        assertThat(reasons(story, end.minus(SECOND))).as("%s", last).isEmpty();
        assertThat(reasons(story, end)).as("%s", last).containsExactly(Reason.EXPIRED);
    }

    @Test
    void cr03_twentyFourHoursAreHoursAndNoDays() {
        // Over the night of 27 March 2027 ten o'clock comes after twenty-three hours, over that of 30 October after 25.
        assertThat(secondSitting("2027-03-27T10:00", "2027-03-28T10:59")).containsExactly(Need.KNOWLEDGE);
        assertThat(secondSitting("2027-03-27T10:00", "2027-03-28T11:00")).isEmpty();
        assertThat(secondSitting("2027-10-30T10:00", "2027-10-31T08:59")).containsExactly(Need.KNOWLEDGE);
        assertThat(secondSitting("2027-10-30T10:00", "2027-10-31T09:00")).isEmpty();
    }

    private static List<Need> secondSitting(String firstEnds, String secondBegins) {
        LocalDateTime begins = LocalDateTime.parse(secondBegins);
        LocalDateTime decision = begins.plusDays(2);
        Story story =
                Story.school().evidence(LEA, POWDER, decision).without(body -> body instanceof Evidence.SittingNoted);
        story.add(firstEnds, Story.sitting(LEA, LocalDateTime.parse(firstEnds), 12, 0, Story.POOL));
        story.add(begins.plusMinutes(20), Story.sitting(LEA, begins.plusMinutes(20), 12, 0, Story.POOL));
        return story.judge(LEA, POWDER, DECIDER, decision).unmet();
    }

    @Test
    void cr16_somebodyBornOnALeapDayIsOfAgeFromTheFirstOfMarch() {
        Story story = Story.school().born(LEA, "2012-02-29");
        LocalDateTime day = LocalDateTime.parse("2030-01-10T10:00");
        story.evidence(OTHER, POWDER, day);
        story.grant(OTHER, POWDER, DECIDER, day);
        story.add(
                day.minusDays(3),
                new Evidence.AgeException(LEA, OTHER, LocalDate.parse("2030-12-31"), Story.LEAD, null, null));
        story.evidence(LEA, POWDER, day.plusDays(1));
        story.grant(LEA, POWDER, DECIDER, day.plusDays(1));
        assertThat(story.lea("2030-02-28T23:59:59").status()).isEqualTo(Status.SUPERVISED_ONLY);
        assertThat(story.lea("2030-03-01T00:00").reasons()).containsExactly(Reason.TURNED_18);
    }

    @Test
    void cr12_theHundredAndFourthDayIsTheLastWithoutHandling() {
        Story story = Story.cleared();
        assertThat(story.lea("2027-06-16T23:59:59").isCleared()).isTrue();
        assertThat(story.lea("2027-06-17T00:00").reasons()).containsExactly(Reason.DELTA_OVERDUE);
        Story inTime = Story.cleared();
        inTime.add("2027-06-02T23:59", new Evidence.Handled(LEA, POWDER.id(), Task.WEIGH));
        assertThat(inTime.lea("2027-06-17T00:00").isCleared()).isTrue();
        Story late = Story.cleared();
        late.add("2027-06-03T00:00", new Evidence.Handled(LEA, POWDER.id(), Task.WEIGH));
        assertThat(late.lea("2027-06-16T12:00").isCleared()).isTrue();
        assertThat(late.lea("2027-06-17T00:00").reasons())
                .as("the training was asked for and is overdue")
                .containsExactly(Reason.DELTA_OVERDUE);
    }

    @Test
    void cr15_evidenceAgainstAGrantThatIsEnteredLateTakesItAway() {
        LocalDateTime before = Story.GRANT_DAY.minusDays(1);
        Story failed = Story.cleared();
        failed.addLate(
                before, Story.GRANT_DAY.plusDays(1), Story.practical(LEA, POWDER, Story.OBSERVER, before, false));
        Story unfit = Story.cleared();
        unfit.addLate(before, Story.GRANT_DAY.plusDays(1), new Evidence.FitForTask(LEA, false, null));
        unfit.add(Story.GRANT_DAY.plusDays(2), new Evidence.FitForTask(LEA, true, null));
        for (Story story : List.of(failed, unfit)) {
            assertThat(story.lea("2027-03-08T10:00").reasons()).containsExactly(Reason.EVIDENCE_FELL);
            ClearanceRule then = new ClearanceRule(story.history().knownAt(at("2027-03-05T09:00")));
            assertThat(then.standing(Question.about(LEA, POWDER), at("2027-03-05T09:00"))
                            .isCleared())
                    .as("as known then")
                    .isTrue();
        }
    }

    /** Lea's grant of 4 March 2027 or the year before it, with another last day, and work at the bench until then. */
    private static Story ending(LocalDate said, LocalDate until) {
        LocalDateTime day =
                said.isBefore(LocalDate.of(2027, 12, 1)) ? LocalDateTime.parse("2026-12-01T10:00") : Story.GRANT_DAY;
        Story story = Story.school().evidence(LEA, POWDER, day);
        Judgement judgement = story.judge(LEA, POWDER, DECIDER, day);
        assertThat(judgement.isAllowed()).isTrue();
        story.add(
                day,
                new Decision.Granted(
                        LEA,
                        POWDER.id(),
                        DECIDER,
                        judgement.evidence(),
                        said,
                        judgement.sdsRevision(),
                        Story.POOL,
                        judgement.policy(),
                        false,
                        null,
                        (UUID) null));
        for (LocalDateTime work = day.plusDays(60); work.toLocalDate().isBefore(until); work = work.plusDays(60)) {
            story.add(work, new Evidence.Handled(LEA, POWDER.id(), Task.WEIGH));
        }
        return story;
    }

    private static List<Reason> reasons(Story story, Instant when) {
        return story.standing(Question.about(LEA, POWDER), when).reasons();
    }
}
