package org.riseandgel.clearance.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.riseandgel.clearance.rule.Story.DECIDER;
import static org.riseandgel.clearance.rule.Story.GRANT_DAY;
import static org.riseandgel.clearance.rule.Story.LEA;
import static org.riseandgel.clearance.rule.Story.MASKED;
import static org.riseandgel.clearance.rule.Story.OBSERVER;
import static org.riseandgel.clearance.rule.Story.OTHER;
import static org.riseandgel.clearance.rule.Story.POOL;
import static org.riseandgel.clearance.rule.Story.POWDER;
import static org.riseandgel.clearance.rule.Story.TRAINER;
import static org.riseandgel.clearance.rule.Story.at;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The rule against the requirements of the register, by their numbers. */
class RequirementsTest {
    private static final LocalDateTime DAY = GRANT_DAY;
    private static final String NOON = "2027-03-05T12:00";

    @Test
    void everythingInPlaceIsCleared() {
        Standing lea = Story.cleared().lea(NOON);
        assertThat(lea.status()).isEqualTo(Status.CLEARED);
        assertThat(lea.validThrough()).isEqualTo("2028-03-04");
        assertThat(lea.singleInstructor()).isFalse();
    }

    @Test
    void cr01_aClearanceIsForItsTasksFormAndRoomAlone() {
        Story story = Story.cleared();
        assertThat(ask(story, Form.POWDER, "Room 1", Task.WEIGH)).isEqualTo(Status.CLEARED);
        assertThat(ask(story, Form.POWDER, "Room 1", Task.SPILL)).isEqualTo(Status.NOT_CLEARED);
        assertThat(ask(story, Form.DISPERSION, "Room 1", Task.WEIGH)).isEqualTo(Status.NOT_CLEARED);
        assertThat(ask(story, Form.POWDER, "Room 2", Task.WEIGH)).isEqualTo(Status.NOT_CLEARED);
        assertThat(story.standing(OTHER, POWDER, NOON).reasons()).containsExactly(Reason.NEVER_GRANTED);
    }

    private static Status ask(Story story, Form form, String room, Task task) {
        return story.standing(new Question(LEA, Story.SALT, form, room, Set.of(task)), at(NOON))
                .status();
    }

    @TestFactory
    Stream<DynamicTest> cr02_eachPreconditionRemovedRefusesTheGrant() {
        Map<Need, Predicate<Body>> removed = Map.of(
                Need.TRAINING, body -> body instanceof Evidence.TrainingGiven,
                Need.KNOWLEDGE, body -> body instanceof Evidence.SittingNoted sitting && sitting.right() == 11,
                Need.OBSERVATION, body -> body instanceof Evidence.ObservationAcknowledged,
                Need.PPE, body -> body instanceof Evidence.PpeShown,
                Need.SDS_READ, body -> body instanceof Evidence.SdsRead,
                Need.DECIDER_QUALIFIED,
                        body -> body instanceof Setting.QualificationGiven given && given.act() == Act.DECIDE);
        return removed.entrySet().stream()
                .map(one -> DynamicTest.dynamicTest("without " + one.getKey(), () -> {
                    Judgement judgement = Story.ready().without(one.getValue()).judge(LEA, POWDER, DECIDER, DAY);
                    assertThat(judgement.unmet()).containsExactly(one.getKey());
                    // A grant that somehow is on record without it does not count either.
                    assertThat(Story.cleared().without(one.getValue()).lea(NOON).reasons())
                            .containsExactly(Reason.EVIDENCE_FELL);
                }));
    }

    @Test
    void cr02_trainerAndObserverHaveToBeQualified() {
        assertThat(without(Act.TRAIN).unmet()).containsExactly(Need.TRAINING);
        assertThat(without(Act.OBSERVE).unmet()).containsExactly(Need.OBSERVATION, Need.PPE);
    }

    private static Judgement without(Act act) {
        return Story.ready()
                .without(body -> body instanceof Setting.QualificationGiven given && given.act() == act)
                .judge(LEA, POWDER, DECIDER, DAY);
    }

    @Test
    void cr02_ageAndScopeAndSheet() {
        Story noAge = Story.ready();
        noAge.forgetAge(LEA);
        assertThat(noAge.judge(LEA, POWDER, DECIDER, DAY).unmet()).containsExactly(Need.AGE);
        assertThat(Story.ready()
                        .born(LEA, "2009-03-05")
                        .judge(LEA, POWDER, DECIDER, DAY)
                        .unmet())
                .containsExactly(Need.AGE);
        Story closed = Story.ready();
        closed.add(DAY.minusDays(1), new Setting.ScopeClosed(POWDER.id(), Story.LEAD, null));
        assertThat(closed.judge(LEA, POWDER, DECIDER, DAY).unmet()).containsExactly(Need.SCOPE_OPEN);
        Story newSheet = Story.ready();
        newSheet.add(DAY.minusDays(1), Story.sheet(Story.id(32), "2.0", Set.of(9), LocalDate.parse("2027-03-20")));
        assertThat(newSheet.judge(LEA, POWDER, DECIDER, DAY).unmet()).containsExactly(Need.SDS_READ);
    }

    @Test
    void cr02_respiratorItemsWhereTheScopeNeedsThem() {
        assertThat(masked(body -> false).isAllowed()).isTrue();
        assertThat(masked(body -> body instanceof Evidence.FitTested).unmet()).containsExactly(Need.RESPIRATOR);
        assertThat(masked(body -> body instanceof Evidence.RespiratorTrained).unmet())
                .containsExactly(Need.RESPIRATOR);
        assertThat(masked(body -> body instanceof Evidence.FitForTask).unmet()).containsExactly(Need.FIT_FOR_TASK);
    }

    private static Judgement masked(Predicate<Body> missing) {
        Story story = Story.school();
        story.add(DAY.minusDays(30), new Evidence.FitTested(LEA, true, "half mask", null));
        story.add(DAY.minusDays(30), new Evidence.RespiratorTrained(LEA, TRAINER, Story.means()));
        story.add(DAY.minusDays(29), new Evidence.FitForTask(LEA, true, null));
        return story.evidence(LEA, MASKED, DAY).without(missing).judge(LEA, MASKED, DECIDER, DAY);
    }

    @Test
    void cr03_theKnowledgeGate() {
        assertThat(gate(DAY.minusDays(3), DAY.minusDays(2).plusMinutes(20), POOL))
                .isTrue();
        // Begun 24 hours after the first was handed in is enough; a minute less is not.
        assertThat(gate(DAY.minusDays(3), DAY.minusDays(2).plusMinutes(19), POOL))
                .isFalse();
        assertThat(gate(DAY.minusDays(60), DAY.minusDays(1), POOL)).isTrue();
        assertThat(gate(DAY.minusDays(61), DAY.minusDays(1), POOL)).isFalse();
        assertThat(gate(DAY.minusDays(3), DAY.minusDays(1), "pool-0")).isFalse();
    }

    @Test
    void cr03_tenRightOrACriticalItemWrongIsNotEnough() {
        assertThat(gate(Story.sitting(LEA, DAY.minusDays(1), 10, 0, POOL))).isFalse();
        assertThat(gate(Story.sitting(LEA, DAY.minusDays(1), 11, 1, POOL))).isFalse();
        assertThat(gate(Story.sitting(LEA, DAY.minusDays(1), 11, 0, POOL))).isTrue();
        assertThat(gate(Story.recall(LEA, DAY.minusDays(1), 0))).isFalse();
        Evidence.SittingNoted full = Story.sitting(LEA, DAY.minusDays(1), 11, 0, POOL);
        assertThat(gate(ofElevenItems(full)))
                .as("all right, but of eleven items")
                .isFalse();
    }

    private static Evidence.SittingNoted ofElevenItems(Evidence.SittingNoted full) {
        return new Evidence.SittingNoted(
                full.person(),
                full.sitting(),
                full.check(),
                full.kind(),
                full.startedAt(),
                full.handedInAt(),
                11,
                11,
                0,
                full.versions());
    }

    private static boolean gate(LocalDateTime first, LocalDateTime second, String poolOfSecond) {
        Story story = Story.ready().without(body -> body instanceof Evidence.SittingNoted);
        story.add(first, Story.sitting(LEA, first, 12, 0, POOL));
        story.add(second, Story.sitting(LEA, second, 12, 0, poolOfSecond));
        return met(story, Need.KNOWLEDGE);
    }

    private static boolean gate(Evidence.SittingNoted second) {
        Story story = Story.ready().without(body -> body instanceof Evidence.SittingNoted);
        story.add(DAY.minusDays(5), Story.sitting(LEA, DAY.minusDays(5), 12, 0, POOL));
        story.add(DAY.minusDays(1), second);
        return met(story, Need.KNOWLEDGE);
    }

    private static boolean met(Story story, Need need) {
        return !story.judge(LEA, POWDER, DECIDER, DAY).unmet().contains(need);
    }

    @Test
    void cr04_theDeciderIsNeitherLearnerNorObserverNorTrainerOfTheLast24Months() {
        for (UUID one : List.of(LEA, OBSERVER, TRAINER)) {
            Story story = Story.ready();
            story.qualify(DAY.minusDays(30), one, Act.DECIDE, "2027-12-31");
            assertThat(story.judge(LEA, POWDER, one, DAY).unmet()).contains(Need.SEPARATION);
        }
        assertThat(separate(DAY.minusMonths(24))).isFalse();
        assertThat(separate(DAY.minusMonths(24).minusDays(1))).isTrue();
    }

    private static boolean separate(LocalDateTime trained) {
        Story story = Story.ready();
        story.addLate(trained, DAY.minusDays(1), Story.training(LEA, DECIDER));
        return met(story, Need.SEPARATION);
    }

    @Test
    void cr04_trainingByTheDeciderThatIsEnteredLateTakesTheGrantAway() {
        Story story = Story.cleared();
        story.addLate(DAY.minusDays(40), DAY.plusDays(1), Story.training(LEA, DECIDER));
        assertThat(story.lea("2027-03-06T12:00").reasons()).containsExactly(Reason.EVIDENCE_FELL);
    }

    @Test
    void cr05_aSingleInstructorDecisionIsMarkedAndEndsAfterSixMonths() {
        Story story = Story.ready();
        story.qualify(DAY.minusDays(30), OBSERVER, Act.DECIDE, "2027-12-31");
        Proposal alone = new Proposal(LEA, POWDER.id(), OBSERVER, POOL, true);
        story.grant(alone, DAY);
        assertThat(story.lea(NOON).isCleared()).isTrue();
        assertThat(story.lea(NOON).singleInstructor()).isTrue();
        assertThat(story.lea(NOON).validThrough()).isEqualTo("2027-09-04");
        for (int days : List.of(80, 160)) {
            story.add(DAY.plusDays(days), new Evidence.Handled(LEA, POWDER.id(), Task.WEIGH));
        }
        assertThat(story.lea("2027-09-04T23:59").isCleared()).isTrue();
        assertThat(story.lea("2027-09-05T00:00").reasons()).containsExactly(Reason.EXPIRED);
        Proposal self = new Proposal(LEA, POWDER.id(), LEA, POOL, true);
        assertThat(story.judge(self, DAY.plusHours(1)).unmet()).contains(Need.SEPARATION);
    }

    @Test
    void cr06_oneTakesAwayAndTwoGive() {
        Story story = Story.cleared();
        story.suspend(DAY.plusDays(1), LEA, null);
        assertThat(story.lea("2027-03-05T10:00").reasons()).containsExactly(Reason.SUSPENDED);
        LocalDateTime later = DAY.plusDays(2);
        assertThat(story.mayReinstate(LEA, POWDER, DECIDER, later).unmet()).containsExactly(Need.OBSERVATION);
        story.qualify(DAY, OBSERVER, Act.DECIDE, "2027-12-31");
        UUID practical = story.add(later, Story.practical(LEA, POWDER, OBSERVER, later, true));
        story.add(later, new Evidence.ObservationAcknowledged(LEA, practical));
        assertThat(story.mayReinstate(LEA, POWDER, OBSERVER, later).unmet()).containsExactly(Need.SEPARATION);
        assertThat(story.mayReinstate(LEA, POWDER, LEA, later).unmet()).contains(Need.SEPARATION);
        story.reinstate(LEA, POWDER, DECIDER, later.plusHours(3));
        assertThat(story.lea("2027-03-06T12:59").status()).isEqualTo(Status.NOT_CLEARED);
        assertThat(story.lea("2027-03-06T13:00").status()).isEqualTo(Status.CLEARED);
    }

    @Test
    void cr06_whatTheDecidersDidNotKnowIsNotLifted() {
        Story story = Story.cleared();
        story.suspend(DAY.plusDays(1), LEA, null);
        story.reinstate(LEA, POWDER, DECIDER, DAY.plusDays(4));
        story.addLate(
                DAY.plusDays(2), DAY.plusDays(6), new Decision.Suspended(LEA, null, OBSERVER, Trigger.INCIDENT, null));
        assertThat(story.lea("2027-03-11T12:00").reasons()).containsExactly(Reason.SUSPENDED);
    }

    @Test
    void cr06_noGrantGoesAroundASuspension() {
        Story story = Story.ready();
        story.suspend(DAY.minusDays(1), LEA, null);
        assertThat(story.judge(LEA, POWDER, DECIDER, DAY).unmet()).containsExactly(Need.NOT_SUSPENDED);
    }

    @Test
    void cr07_oneCriticalStepPromptedIsNotPassed() {
        Story story = Story.ready();
        LocalDateTime again = DAY.minusDays(1);
        UUID practical = story.add(again, Story.practical(LEA, POWDER, OBSERVER, again, false));
        story.add(again, new Evidence.ObservationAcknowledged(LEA, practical));
        assertThat(story.judge(LEA, POWDER, DECIDER, DAY).unmet())
                .as("the newest practical counts")
                .containsExactly(Need.OBSERVATION);
    }

    @Test
    void cr07_aStepThatNobodyWroteAboutIsNotPassed() {
        List<StepSeen> half = List.of(new StepSeen("gloves", true, StepSeen.Outcome.UNPROMPTED));
        assertThat(Story.WEIGH_OUT.isPassedBy(half)).isFalse();
        assertThat(Story.WEIGH_OUT.isPassedBy(
                        List.of(half.get(0), new StepSeen("gloves", false, StepSeen.Outcome.UNPROMPTED))))
                .isFalse();
    }

    @Test
    void cr08_meansNeedsItsFields() {
        assertThat(problem(() -> new Means(null, null, "en", false))).contains("how it was verified");
        assertThat(problem(() -> new Means(Means.How.SITTING, null, "en", false)))
                .contains("which one");
        assertThat(problem(() -> new Means(Means.How.ORAL, null, " ", false))).contains("language");
    }

    private static String problem(Runnable making) {
        try {
            making.run();
            return "";
        } catch (IllegalArgumentException e) {
            return e.getMessage();
        }
    }

    @Test
    void cr11_eachTriggerSuspendsAtOnce() {
        for (Trigger trigger : List.of(Trigger.INCIDENT, Trigger.NEAR_MISS, Trigger.UNSAFE_ACT)) {
            Story story = Story.cleared();
            story.add(DAY.plusDays(1), new Decision.Suspended(LEA, null, OBSERVER, trigger, null));
            assertThat(story.lea("2027-03-05T09:59").isCleared()).isTrue();
            assertThat(story.lea("2027-03-05T10:00").reasons()).containsExactly(Reason.SUSPENDED);
        }
    }

    @Test
    void cr11_aFailedRecallOnACriticalItemSuspends() {
        Story story = Story.cleared();
        story.add(DAY.plusDays(30), Story.recall(LEA, DAY.plusDays(30), 0));
        assertThat(story.lea("2027-04-05T12:00").isCleared()).isTrue();
        story.add(DAY.plusDays(40), Story.recall(LEA, DAY.plusDays(40), 1));
        assertThat(story.lea("2027-04-14T12:00").reasons()).containsExactly(Reason.SUSPENDED);
        story.reinstate(LEA, POWDER, DECIDER, DAY.plusDays(45));
        assertThat(story.lea("2027-04-18T12:00").isCleared()).isTrue();
    }

    @Test
    void cr11_anObserverOrTrainerWithdrawnForCauseSuspends() {
        for (UUID party : List.of(OBSERVER, TRAINER)) {
            Story story = Story.cleared();
            story.add(DAY.plusDays(3), new Decision.Withdrawn(party, null, DECIDER, false, null));
            assertThat(story.lea("2027-03-08T12:00").isCleared())
                    .as("for no cause")
                    .isTrue();
            story.add(DAY.plusDays(5), new Decision.Withdrawn(party, null, DECIDER, true, null));
            assertThat(story.lea("2027-03-10T12:00").reasons()).containsExactly(Reason.PARTY_WITHDRAWN);
        }
    }

    @Test
    void cr11_aChangeOfSection2Or8WithoutDeltaTrainingSuspendsWhenItIsDue() {
        Story story = Story.cleared();
        UUID filed =
                story.add(DAY.plusDays(1), Story.sheet(Story.id(32), "2.0", Set.of(8), LocalDate.parse("2027-03-19")));
        assertThat(story.lea("2027-03-19T23:59").isCleared()).isTrue();
        assertThat(story.lea("2027-03-20T00:00").reasons()).containsExactly(Reason.SDS_DELTA_OVERDUE);
        LocalDateTime late = LocalDateTime.parse("2027-03-22T10:00");
        assertThat(story.mayReinstate(LEA, POWDER, DECIDER, late).unmet())
                .containsExactly(Need.OBSERVATION, Need.DELTA_DONE);
        story.add(late, new Evidence.DeltaDone(LEA, filed, TRAINER, Story.means()));
        assertThat(story.lea("2027-03-22T12:00").reasons())
                .as("a suspension does not go away by itself")
                .containsExactly(Reason.SDS_DELTA_OVERDUE);
        story.reinstate(LEA, POWDER, DECIDER, late.plusHours(5));
        assertThat(story.lea("2027-03-22T15:00").isCleared()).isTrue();
    }

    @Test
    void cr12_otherDeltasLapseAndComeBackWithTheTraining() {
        Story story = Story.cleared();
        UUID asked = story.add(
                DAY.plusDays(1),
                new Setting.DeltaAsked(null, POWDER.id(), DeltaKind.NEW_PPE, LocalDate.parse("2027-03-19"), null));
        assertThat(story.lea("2027-03-19T23:59").isCleared()).isTrue();
        assertThat(story.lea("2027-03-20T00:00").reasons()).containsExactly(Reason.DELTA_OVERDUE);
        story.add("2027-03-21T09:00", new Evidence.DeltaDone(LEA, asked, OBSERVER, Story.means()));
        assertThat(story.lea("2027-03-21T12:00").isCleared())
                .as("an observer is no trainer")
                .isFalse();
        story.add("2027-03-21T13:00", new Evidence.DeltaDone(LEA, asked, TRAINER, Story.means()));
        assertThat(story.lea("2027-03-21T13:00").isCleared()).isTrue();
    }

    @Test
    void cr12_everyKindOfChangeAsksForATraining() {
        for (DeltaKind kind : DeltaKind.values()) {
            Story story = Story.cleared();
            story.add(DAY.plusDays(1), new Setting.DeltaAsked(LEA, null, kind, LocalDate.parse("2027-03-19"), null));
            assertThat(story.lea("2027-03-20T00:00").reasons()).as("%s", kind).containsExactly(Reason.DELTA_OVERDUE);
        }
        // A revision of the sheet that leaves sections 2 and 8 as they were does not suspend, but asks as well.
        Story story = Story.cleared();
        UUID filed =
                story.add(DAY.plusDays(1), Story.sheet(Story.id(32), "2.0", Set.of(9), LocalDate.parse("2027-03-19")));
        assertThat(story.lea("2027-03-19T23:59").isCleared()).isTrue();
        assertThat(story.lea("2027-03-20T00:00").reasons()).containsExactly(Reason.DELTA_OVERDUE);
        story.add("2027-03-21T13:00", new Evidence.DeltaDone(LEA, filed, TRAINER, Story.means()));
        assertThat(story.lea("2027-03-21T13:00").isCleared()).isTrue();
    }

    @Test
    void cr12_ninetyDaysWithoutHandlingAskForADelta() {
        Story story = Story.cleared();
        // 4 March + 90 days = 2 June, + 14 days = 16 June.
        assertThat(story.lea("2027-06-16T23:59").isCleared()).isTrue();
        assertThat(story.lea("2027-06-17T00:00").reasons()).containsExactly(Reason.DELTA_OVERDUE);
        story.add("2027-05-01T09:00", new Evidence.Handled(LEA, POWDER.id(), Task.WEIGH));
        assertThat(story.lea("2027-06-17T00:00").isCleared()).isTrue();
        // 1 May + 104 days = 13 August.
        assertThat(story.lea("2027-08-14T00:00").reasons()).containsExactly(Reason.DELTA_OVERDUE);
        story.add("2027-08-20T09:00", new Evidence.Handled(LEA, POWDER.id(), Task.WEIGH));
        assertThat(story.lea("2027-08-20T10:00").isCleared()).as("too late").isFalse();
        story.add("2027-08-21T09:00", new Evidence.DeltaDone(LEA, null, TRAINER, Story.means()));
        assertThat(story.lea("2027-08-21T09:00").isCleared()).isTrue();
    }

    @Test
    void cr15_asKnownThenAndAsKnownNow() {
        Story story = Story.cleared();
        UUID practical = story.events().stream()
                .filter(e -> e.body() instanceof Evidence.ObservationRecorded)
                .findFirst()
                .orElseThrow()
                .id();
        story.addLate(
                DAY.plusDays(10),
                DAY.plusDays(10),
                new Keeping.Corrected(
                        practical,
                        OBSERVER,
                        DECIDER,
                        at(DAY.minusDays(5)),
                        Story.practical(LEA, POWDER, OBSERVER, DAY.minusDays(5), false),
                        null));
        Question question = Question.about(LEA, POWDER);
        assertThat(new ClearanceRule(story.history().knownAt(at("2027-03-04T10:15")))
                        .standing(question, at("2027-03-04T10:15"))
                        .status())
                .isEqualTo(Status.CLEARED);
        assertThat(story.lea("2027-03-04T10:15").reasons()).containsExactly(Reason.EVIDENCE_FELL);
    }

    @Test
    void cr16_under18IsSupervisedOnlyAndOnlyWithAnException() {
        Story story = Story.school().born(LEA, "2009-06-10").evidence(OTHER, POWDER, DAY);
        story.grant(OTHER, POWDER, DECIDER, DAY);
        story.evidence(LEA, POWDER, DAY.plusDays(1));
        assertThat(story.judge(LEA, POWDER, DECIDER, DAY.plusDays(1)).unmet()).containsExactly(Need.AGE);
        story.add(
                DAY.minusDays(3),
                new Evidence.AgeException(LEA, OTHER, LocalDate.parse("2027-06-30"), Story.LEAD, null, null));
        story.grant(LEA, POWDER, DECIDER, DAY.plusDays(1));
        Standing lea = story.lea("2027-03-06T12:00");
        assertThat(lea.status()).isEqualTo(Status.SUPERVISED_ONLY);
        assertThat(lea.supervisor()).isEqualTo(OTHER);
        assertThat(lea.holdsUntil()).isEqualTo(at("2027-06-10T00:00"));
        assertThat(story.lea("2027-06-09T23:59").status()).isEqualTo(Status.SUPERVISED_ONLY);
        assertThat(story.lea("2027-06-10T00:00").reasons()).containsExactly(Reason.TURNED_18);
        story.suspend(DAY.plusDays(20), OTHER, null);
        assertThat(story.lea("2027-03-25T12:00").reasons()).containsExactly(Reason.SUPERVISOR_NOT_CLEARED);
    }

    @Test
    void cr16_whoSupervisesIsClearedForAllOfIt() {
        Story story = Story.school().born(LEA, "2009-06-10").evidence(LEA, POWDER, DAY.plusDays(1));
        story.add(
                DAY.minusDays(3),
                new Evidence.AgeException(LEA, OTHER, LocalDate.parse("2027-06-30"), Story.LEAD, null, null));
        assertThat(story.judge(LEA, POWDER, DECIDER, DAY.plusDays(1)).unmet())
                .as("a supervisor who is cleared for nothing")
                .containsExactly(Need.AGE);
        story.evidence(OTHER, POWDER, DAY);
        story.grant(OTHER, POWDER, DECIDER, DAY);
        assertThat(story.judge(LEA, POWDER, DECIDER, DAY.plusDays(1)).isAllowed())
                .isTrue();
    }

    @Test
    void cr16_theExceptionEndsWithItsDay() {
        Story story = Story.school().born(LEA, "2009-06-10").evidence(OTHER, POWDER, DAY);
        story.grant(OTHER, POWDER, DECIDER, DAY);
        story.evidence(LEA, POWDER, DAY.plusDays(1));
        story.add(
                DAY.minusDays(3),
                new Evidence.AgeException(LEA, OTHER, LocalDate.parse("2027-04-30"), Story.LEAD, null, null));
        story.grant(LEA, POWDER, DECIDER, DAY.plusDays(1));
        assertThat(story.lea("2027-04-30T23:59").status()).isEqualTo(Status.SUPERVISED_ONLY);
        assertThat(story.lea("2027-05-01T00:00").reasons()).containsExactly(Reason.UNDER_18, Reason.EXPIRED);
    }

    @Test
    void cr17_notFitForTheTaskIsEnough() {
        Story story = Story.cleared();
        story.add(DAY.plusDays(1), new Evidence.FitForTask(LEA, false, null));
        assertThat(story.lea("2027-03-05T10:00").reasons()).containsExactly(Reason.NOT_FIT_FOR_TASK);
        story.add(DAY.plusDays(2), new Evidence.FitForTask(LEA, true, null));
        assertThat(story.lea("2027-03-06T10:00").isCleared()).isTrue();
    }

    @Test
    void cr18_validityIsCheckedOnTheDayOfTheAct() {
        Story expiredYesterday = Story.ready().without(Story::observersQualification);
        expiredYesterday.qualify(DAY.minusDays(30), OBSERVER, Act.OBSERVE, "2027-02-26");
        assertThat(expiredYesterday.judge(LEA, POWDER, DECIDER, DAY).unmet()).containsExactly(Need.OBSERVATION);
        Story lastDay = Story.ready().without(Story::observersQualification);
        lastDay.qualify(DAY.minusDays(30), OBSERVER, Act.OBSERVE, "2027-02-27");
        assertThat(lastDay.judge(LEA, POWDER, DECIDER, DAY).isAllowed()).isTrue();
    }

    @Test
    void cr18_whatSomebodyFoundOutForCauseHasSeenCarriesNoNewGrant() {
        Story story = Story.ready();
        story.add(DAY.minusDays(1), new Decision.Withdrawn(OBSERVER, null, DECIDER, false, null));
        assertThat(story.judge(LEA, POWDER, DECIDER, DAY).isAllowed())
                .as("for no cause")
                .isTrue();
        story.add(DAY.minusDays(1), new Decision.Withdrawn(OBSERVER, null, DECIDER, true, null));
        assertThat(story.judge(LEA, POWDER, DECIDER, DAY).unmet()).containsExactly(Need.OBSERVATION, Need.PPE);
    }

    @Test
    void cr20_earlierTrainingIsEvidenceAndNoMore() {
        Story story = Story.ready().without(body -> body instanceof Evidence.TrainingGiven);
        story.add(
                DAY.minusDays(9),
                new Evidence.EarlierTraining(LEA, Story.SALT, LocalDate.parse("2026-03-04"), Story.LEAD, null));
        assertThat(story.judge(LEA, POWDER, DECIDER, DAY).isAllowed()).isTrue();
        assertThat(story.judge(LEA, POWDER, DECIDER, DAY.plusDays(1)).unmet()).containsExactly(Need.TRAINING);
        story.without(body -> body instanceof Evidence.ObservationRecorded);
        assertThat(story.judge(LEA, POWDER, DECIDER, DAY).unmet()).containsExactly(Need.OBSERVATION);
    }

    @Test
    void cr28_aPolicyThatAsksForMoreNamesWhoWouldNotPass() {
        Story story = Story.cleared();
        ClearanceRule rule = new ClearanceRule(story.history());
        Policy now = Story.policy();
        assertThat(rule.wouldPass(LEA, POWDER, now, at(NOON))).isTrue();
        Policy stricter = new Policy(
                "policy-2",
                new Policy.Knowledge("safe-handling-check", 2, 12, 12, 24, 60),
                now.periods(),
                true,
                now.ppe(),
                now.respirator(),
                now.checklists());
        assertThat(rule.wouldPass(LEA, POWDER, stricter, at(NOON))).isFalse();
        Policy shorter = new Policy(
                "policy-3", now.knowledge(), Story.periods(1), true, now.ppe(), now.respirator(), now.checklists());
        assertThat(rule.wouldPass(LEA, POWDER, shorter, at("2027-04-04T12:00"))).isTrue();
        assertThat(rule.wouldPass(LEA, POWDER, shorter, at("2027-04-05T12:00"))).isFalse();
        story.add(
                DAY.plusDays(5),
                new Setting.RenewalAsked(LEA, grantOf(story), LocalDate.parse("2027-04-10"), "policy-2"));
        assertThat(story.lea("2027-04-10T23:59").isCleared()).isTrue();
        assertThat(story.lea("2027-04-11T00:00").reasons()).containsExactly(Reason.RENEWAL_OVERDUE);
    }

    private static UUID grantOf(Story story) {
        return story.events().stream()
                .filter(e -> e.body() instanceof Decision.Granted)
                .findFirst()
                .orElseThrow()
                .id();
    }

    @Test
    void withdrawnNeedsANewGrant() {
        Story story = Story.cleared();
        story.add(DAY.plusDays(1), new Decision.Withdrawn(LEA, POWDER.id(), OTHER, false, null));
        assertThat(story.lea("2027-03-05T10:00").reasons()).containsExactly(Reason.WITHDRAWN);
        story.evidence(LEA, POWDER, DAY.plusDays(30));
        story.grant(LEA, POWDER, DECIDER, DAY.plusDays(30));
        assertThat(story.lea("2027-04-03T10:00").isCleared()).isTrue();
    }

    @Test
    void twoGrantsAtOnceTheSecondIsRefused() {
        Story story = Story.cleared();
        assertThat(story.judge(LEA, POWDER, DECIDER, DAY).unmet()).containsExactly(Need.KNOWLEDGE, Need.OBSERVATION);
    }

    @Test
    void cr11_respiratorPapersThatRunOutSuspend() {
        Story story = Story.school();
        story.add(DAY.minusDays(30), new Evidence.FitTested(LEA, true, "half mask", null));
        story.add(DAY.minusDays(30), new Evidence.RespiratorTrained(LEA, TRAINER, Story.means()));
        story.evidence(LEA, MASKED, DAY);
        assertThat(story.judge(LEA, MASKED, DECIDER, DAY).unmet()).containsExactly(Need.FIT_FOR_TASK);
        story.add(DAY.minusDays(29), new Evidence.FitForTask(LEA, true, null));
        story.grant(LEA, MASKED, DECIDER, DAY);
        for (String handled : List.of("2027-05-10T09:00", "2027-08-01T09:00", "2027-10-28T09:00", "2028-01-20T09:00")) {
            story.add(handled, new Evidence.Handled(LEA, MASKED.id(), Task.WEIGH));
        }
        // Tested on 2 February 2027: through 2 February 2028.
        assertThat(story.standing(LEA, MASKED, "2028-02-02T23:59").isCleared()).isTrue();
        assertThat(story.standing(LEA, MASKED, "2028-02-03T00:00").reasons()).containsExactly(Reason.RESPIRATOR_LAPSED);
        story.add("2028-02-03T09:00", new Evidence.FitTested(LEA, true, "half mask", null));
        story.add("2028-02-03T09:00", new Evidence.RespiratorTrained(LEA, TRAINER, Story.means()));
        assertThat(story.standing(LEA, MASKED, "2028-02-03T10:00").reasons())
                .as("suspended until it is lifted")
                .containsExactly(Reason.RESPIRATOR_LAPSED);
        story.reinstate(LEA, MASKED, DECIDER, LocalDateTime.parse("2028-02-04T12:00"));
        assertThat(story.standing(LEA, MASKED, "2028-02-04T12:00").isCleared()).isTrue();
    }

    @Test
    void cr11_eitherOfTheRespiratorPapersIsEnoughToSuspend() {
        Body fitted = new Evidence.FitTested(LEA, true, "half mask", null);
        Body trained = new Evidence.RespiratorTrained(LEA, TRAINER, Story.means());
        for (Body renewed : List.of(fitted, trained)) {
            Story story = Story.school();
            story.add(DAY.minusDays(360), fitted);
            story.add(DAY.minusDays(360), trained);
            story.add(DAY.minusDays(29), new Evidence.FitForTask(LEA, true, null));
            story.evidence(LEA, MASKED, DAY);
            story.grant(LEA, MASKED, DECIDER, DAY);
            story.add(DAY.plusDays(1), renewed);
            // Both are of 9 March 2026: through 9 March 2027.
            assertThat(story.standing(LEA, MASKED, "2027-03-09T23:59").isCleared())
                    .isTrue();
            assertThat(story.standing(LEA, MASKED, "2027-03-10T00:00").reasons())
                    .as("renewed alone: %s", renewed)
                    .containsExactly(Reason.RESPIRATOR_LAPSED);
        }
    }

    @Test
    void cr10_anAgeThatIsNoLongerKnownClearsNobody() {
        Story story = Story.cleared();
        story.forgetAge(LEA);
        assertThat(story.lea(NOON).status()).isEqualTo(Status.NOT_CLEARED);
        assertThat(story.lea(NOON).reasons()).contains(Reason.AGE_UNKNOWN);
        assertThat(story.judge(LEA, POWDER, DECIDER, DAY.plusDays(1)).unmet()).contains(Need.AGE);
    }

    @Test
    void cr10_whatContradictsItselfClearsNobody() {
        Story story = Story.cleared();
        story.add(DAY.plusDays(1), new Keeping.Corrected(UUID.randomUUID(), OBSERVER, DECIDER, null, null, null));
        assertThat(story.lea("2027-03-06T12:00").reasons()).containsExactly(Reason.UNREADABLE);
        assertThat(Story.cleared()
                        .without(body -> body instanceof Setting.PolicyInForce)
                        .lea(NOON)
                        .reasons())
                .containsExactly(Reason.UNREADABLE);
    }
}
